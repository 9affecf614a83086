using System.Globalization;
using System.Text;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// Writes finished pages as a tagged PDF 1.7 file (ISO 32000-1) that is both PDF/UA-1 (ISO 14289-1) and PDF/A-2a
/// (ISO 19005-2). Safe to use from several threads.
/// </summary>
public static class PdfExporter
{
    /// <summary>What the files say made them.</summary>
    internal const string Producer = "Pattern Press";

    /// <summary>Writes a document. The same document gives the same bytes.</summary>
    /// <param name="document">The document.</param>
    /// <param name="output">Where the file goes; it is left open.</param>
    /// <exception cref="ArgumentException">
    /// The document cannot be written as an accessible file: it has no pages, no title or no language, content is tagged with
    /// an element outside its structure, a figure lacks its alternative text, a link or bookmark leads nowhere, a face has no
    /// glyph for a character, or a picture cannot be read.
    /// </exception>
    public static void Write(PressDocument document, Stream output)
    {
        ArgumentNullException.ThrowIfNull(output);
        using var file = new PdfFile();
        WriteDocument(document, file);
        output.Write(file.Bytes);
    }

    /// <summary>A document as the bytes of a file, in memory.</summary>
    /// <param name="document">The document.</param>
    /// <exception cref="ArgumentException">The document cannot be written, as <see cref="Write"/> says.</exception>
    public static byte[] ToBytes(PressDocument document)
    {
        using var file = new PdfFile();
        WriteDocument(document, file);
        return file.Bytes.ToArray();
    }

    private static void WriteDocument(PressDocument document, PdfFile file)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (document.Pages.Count == 0)
            throw new ArgumentException("A document needs at least one page.", nameof(document));
        if (string.IsNullOrWhiteSpace(document.Title) || string.IsNullOrWhiteSpace(document.Language))
            throw new ArgumentException("A document needs a title and a language.", nameof(document));
        var (catalog, info, pageTree) = (file.Reserve(), file.Reserve(), file.Reserve());
        var pageIds = document.Pages.Select(_ => file.Reserve()).ToList();
        var destinations = new Destinations();
        for (var i = 0; i < pageIds.Count; i++)
            destinations.Add(document.Pages[i], pageIds[i]);
        var structure = new StructureTree(file, document.Structure);
        var fonts = new PdfFonts(file);
        var images = new PdfImages(file);
        using var buffer = new PdfBuffer();
        var content = new ContentWriter(buffer, fonts, images, structure);
        for (var i = 0; i < pageIds.Count; i++)
        {
            var page = document.Pages[i];
            var key = structure.StartPage(page, pageIds[i], pageIds.Count);
            content.Write(page);
            var stream = file.Reserve();
            file.Stream(stream, default, buffer.Span);
            var links = WriteLinks(file, page, structure, destinations);
            WritePage(file.Object(pageIds[i]), page, pageTree, stream, key, fonts.Resources, content.PageImages, links);
        }

        fonts.Write();
        images.Write();
        structure.Write();
        var tree = file.Object(pageTree).Raw("<</Type/Pages/Count "u8).Int(pageIds.Count).Raw("/Kids["u8);
        foreach (var id in pageIds)
            tree.Ref(id).Byte((byte)' ');
        tree.Raw("]>>"u8);
        WriteInfo(file.Object(info), document);
        WriteCatalog(file, catalog, pageTree, document, structure, destinations);
        file.Finish(catalog, info);
    }

    private static List<int> WriteLinks(PdfFile file, Page page, StructureTree structure, Destinations destinations)
    {
        var ids = new List<int>(page.Links.Count);
        foreach (var link in page.Links)
        {
            var id = file.Reserve();
            ids.Add(id);
            var key = structure.Link(link.Element, id);
            var to = file.Object(id).Raw("<</Type/Annot/Subtype/Link/Rect["u8);
            WriteBox(to, link.X, page.Height - link.Y - link.Height, link.X + link.Width, page.Height - link.Y);

            // Printed with the page (ISO 19005-2, 6.3.2), and without a frame.
            to.Raw("]/F 4/Border[0 0 0]/StructParent "u8).Int(key)
                .Raw("/Contents"u8).Text(string.IsNullOrWhiteSpace(link.Description) ? link.Target : link.Description);
            if (link.IsAddress)
            {
                to.Raw("/A<</S/URI/URI"u8).Text(AsciiAddress(link.Target)).Raw(">>"u8);
            }
            else
            {
                to.Raw("/Dest"u8);
                destinations.WriteName(to, link.Target);
            }

            to.Raw(">>"u8);
        }

        return ids;
    }

    /// <summary>An address in seven-bit characters (ISO 32000-1, 12.6.4.7), others by their UTF-8 bytes (RFC 3986).</summary>
    private static string AsciiAddress(string address)
    {
        var ascii = new StringBuilder(address.Length);
        foreach (var b in Encoding.UTF8.GetBytes(address))
        {
            if (b is > 0x20 and < 0x7F)
                ascii.Append((char)b);
            else
                ascii.Append(CultureInfo.InvariantCulture, $"%{b:X2}");
        }

        return ascii.ToString();
    }

    private static void WriteBox(PdfBuffer to, double left, double bottom, double right, double top) => to
        .Number(PageSpace.Points(left)).Byte((byte)' ').Number(PageSpace.Points(bottom)).Byte((byte)' ')
        .Number(PageSpace.Points(right)).Byte((byte)' ').Number(PageSpace.Points(top));

    private static void WritePage(
        PdfBuffer to,
        Page page,
        int parent,
        int content,
        int key,
        int fonts,
        IReadOnlyList<PdfImage> images,
        List<int> links)
    {
        to.Raw("<</Type/Page/Parent "u8).Ref(parent).Raw("/MediaBox["u8);
        WriteBox(to, 0, 0, page.Width, page.Height);
        to.Raw("]/TrimBox["u8);
        WriteBox(to, 0, 0, page.Width, page.Height);
        to.Raw("]/Contents "u8).Ref(content).Raw("/StructParents "u8).Int(key).Raw("/Tabs/S/Resources<</Font "u8).Ref(fonts);
        if (images.Count > 0)
        {
            to.Raw("/XObject<<"u8);
            foreach (var image in images)
                to.Raw("/I"u8).Int(image.Number).Byte((byte)' ').Ref(image.Id);
            to.Raw(">>"u8);
        }

        to.Raw(">>"u8);
        if (images.Any(image => image.Pixels.Alpha is not null))
            to.Raw("/Group<</S/Transparency/CS/DeviceRGB>>"u8);
        if (links.Count > 0)
        {
            to.Raw("/Annots["u8);
            foreach (var link in links)
                to.Ref(link).Byte((byte)' ');
            to.Byte((byte)']');
        }

        to.Raw(">>"u8);
    }

    private static void WriteInfo(PdfBuffer to, PressDocument document)
    {
        to.Raw("<</Title"u8).Text(document.Title);
        if (document.Author.Length > 0)
            to.Raw("/Author"u8).Text(document.Author);
        if (document.Subject.Length > 0)
            to.Raw("/Subject"u8).Text(document.Subject);
        to.Raw("/Creator"u8).Text(Producer).Raw("/Producer"u8).Text(Producer);
        if (document.Date is { } date)
        {
            var day = date.ToString("'D:'yyyyMMdd", CultureInfo.InvariantCulture);
            to.Raw("/CreationDate"u8).Text(day).Raw("/ModDate"u8).Text(day);
        }

        to.Raw(">>"u8);
    }

    private static void WriteCatalog(
        PdfFile file,
        int catalog,
        int pageTree,
        PressDocument document,
        StructureTree structure,
        Destinations destinations)
    {
        var (metadata, profile) = (file.Reserve(), file.Reserve());

        // Left unpacked, so that tools which know nothing of PDF find it.
        file.Stream(metadata, "/Type/Metadata/Subtype/XML"u8, XmpPacket.Write(document), isToBePacked: false);
        file.Stream(profile, "/N 3"u8, SrgbProfile.Bytes);
        var names = destinations.Write(file);
        var outline = document.Bookmarks.Count > 0 ? Outline.Write(file, destinations, document.Bookmarks) : 0;
        var to = file.Object(catalog).Raw("<</Type/Catalog/Pages "u8).Ref(pageTree)
            .Raw("/Lang"u8).Text(document.Language)
            .Raw("/MarkInfo<</Marked true>>/StructTreeRoot "u8).Ref(structure.Id)
            .Raw("/Metadata "u8).Ref(metadata)
            .Raw("/OutputIntents[<</Type/OutputIntent/S/GTS_PDFA1/OutputConditionIdentifier(sRGB IEC61966-2.1)/RegistryName(http://www.color.org)/Info(sRGB IEC61966-2.1)/DestOutputProfile "u8)
            .Ref(profile).Raw(">>]/ViewerPreferences<</DisplayDocTitle true/PrintScaling/None/PickTrayByPDFSize true>>/PageLabels"u8);
        PageLabels.Write(to, document.Pages);
        if (names > 0)
            to.Raw("/Names<</Dests "u8).Ref(names).Raw(">>"u8);
        if (outline > 0)
            to.Raw("/PageMode/UseOutlines/Outlines "u8).Ref(outline);
        to.Raw(">>"u8);
    }
}
