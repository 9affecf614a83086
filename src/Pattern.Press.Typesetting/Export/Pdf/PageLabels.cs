using System.Globalization;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>Page numbers as printed (ISO 32000-1, 12.4.2), in ranges that count on.</summary>
internal static class PageLabels
{
    public static void Write(PdfBuffer to, IReadOnlyList<Page> pages)
    {
        to.Raw("<</Nums["u8);
        (string Prefix, int? Number)? last = null;
        for (var i = 0; i < pages.Count; i++)
        {
            var label = Split(pages[i].Label);
            var goesOn = last is { } before && before.Prefix == label.Prefix &&
                (label.Number is { } number ? before.Number == number - 1 : before.Number is null);
            last = label;
            if (goesOn)
                continue;
            to.Int(i).Raw("<<"u8);
            if (label.Prefix.Length > 0)
                to.Raw("/P"u8).Text(label.Prefix);
            if (label.Number is { } start)
                to.Raw("/S/D/St "u8).Int(start);
            to.Raw(">>"u8);
        }

        to.Raw("]>>"u8);
    }

    /// <summary>Splits <c>T12</c> into its prefix and its number; a label without a number is all prefix.</summary>
    private static (string Prefix, int? Number) Split(string label)
    {
        var start = label.Length;
        while (start > 0 && char.IsAsciiDigit(label[start - 1]))
            start--;
        while (start < label.Length && label[start] == '0')
            start++;
        return int.TryParse(label.AsSpan(start), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? (label[..start], number)
            : (label, null);
    }
}
