using System.Globalization;

namespace Pattern.Press.Plans;

/// <summary>Letters that name points and pieces in drawings and in words.</summary>
public static class Letters
{
    // Letters that are taken for figures are left out.
    private const string Alphabet = "ABCDEFGHJKLMNPRSTUVWXYZ";

    /// <summary>The letter of a place in a row, from 0: A, B … Z, then A1, B1 …</summary>
    public static string Of(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        return index < Alphabet.Length
            ? Alphabet[index].ToString()
            : Alphabet[index % Alphabet.Length] + (index / Alphabet.Length).ToString(CultureInfo.InvariantCulture);
    }
}
