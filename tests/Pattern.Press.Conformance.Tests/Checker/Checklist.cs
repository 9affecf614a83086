namespace Pattern.Press.Conformance;

/// <summary>Something that must not be in a file.</summary>
/// <param name="Id">
/// The failure condition of the Matterhorn Protocol 1.02 (PDF Association, 2014) such as <c>13-004</c>, or a clause of
/// ISO 19005-2 (<c>A 6.1.2</c>), ISO 14289-1 (<c>UA 7.3</c>) or ISO 32000-1 (<c>PDF 14.6</c>), with a letter where one
/// clause says several things, or <c>Press</c> for what the press promises itself.
/// </param>
/// <param name="Failure">What is wrong then.</param>
public sealed record Condition(string Id, string Failure);

/// <summary>
/// Everything the checker looks for. Numbers and clauses are from memory. Conditions that only people can judge are not
/// here, nor those on things that our files never hold and whose presence is reported as such: sounds, films, forms.
/// </summary>
public static class Checklist
{
    private static readonly HashSet<string> _ids;

    static Checklist()
    {
        All = [.. Protocol(), .. Archive(), .. Format(), .. Promises()];
        _ids = [.. All.Select(condition => condition.Id)];
    }

    /// <summary>Every condition, in order.</summary>
    public static IReadOnlyList<Condition> All { get; }

    /// <summary>Whether there is such a condition.</summary>
    public static bool Knows(string id) => _ids.Contains(id);

    private static IEnumerable<Condition> Protocol() =>
    [
        new("01-003", "An artifact stands inside tagged content."),
        new("01-004", "Tagged content stands inside an artifact."),
        new("01-005", "Content is neither an artifact nor tagged."),
        new("01-007", "The document says that its tags are suspect."),
        new("02-001", "A structure type is not mapped to a standard one."),
        new("02-003", "Structure types are mapped in a circle."),
        new("02-004", "A standard structure type is mapped to another."),
        new("06-001", "There is no XMP metadata stream."),
        new("06-002", "The metadata do not name PDF/UA-1."),
        new("06-003", "The metadata have no title."),
        new("07-001", "Nothing says whether the title is shown."),
        new("07-002", "The title is not shown."),
        new("09-004", "Parts of a table stand where they may not."),
        new("09-005", "Parts of a list stand where they may not."),
        new("09-006", "Parts of contents stand where they may not."),
        new("09-007", "Parts of ruby text stand where they may not."),
        new("09-008", "Parts of warichu text stand where they may not."),
        new("10-001", "A character code has no meaning in Unicode."),
        new("11-001", "Text has no language."),
        new("11-002", "An alternative text has no language."),
        new("11-003", "A bookmark has no language."),
        new("11-004", "The description of a link has no language."),
        new("11-006", "The metadata have no language."),
        new("13-004", "A figure has no alternative text."),
        new("14-002", "The first heading is not of the first level."),
        new("14-003", "A level of headings is skipped."),
        new("14-006", "An element holds several headings without a level."),
        new("14-007", "Headings with and without a level are mixed."),
        new("15-003", "A header cell does not say what it heads."),

        // Left to people by the protocol; where every header has a scope it can be decided.
        new("15-005", "A cell of a table has no header."),
        new("16-001", "A list with labels does not say how it is numbered."),
        new("17-002", "A formula has no alternative text."),
        new("19-003", "A note has no identifier."),
        new("19-004", "Two notes have one identifier."),
        new("20-001", "A configuration of optional content has no name."),
        new("20-002", "A further configuration of optional content has no name."),
        new("20-003", "Optional content changes by itself."),
        new("21-001", "An embedded file lacks one of its two names."),
        new("25-001", "There is a form that is made while it is read."),
        new("26-001", "The file is encrypted without saying what is allowed."),
        new("26-002", "The file is encrypted and keeps out screen readers."),
        new("28-002", "An annotation does not belong to an element Annot."),
        new("28-004", "An annotation has no description."),
        new("28-005", "A field has no description."),
        new("28-006", "An annotation is of an unknown kind."),
        new("28-007", "There is an annotation for trapping."),
        new("28-008", "A page with annotations has no tab order."),
        new("28-009", "The tab order is not that of the structure."),
        new("28-010", "A field does not belong to an element Form."),
        new("28-011", "A link does not belong to an element Link."),
        new("28-012", "A link has no description."),
        new("28-017", "A printer’s mark belongs to the structure."),
        new("30-001", "There is a reference to another file’s page."),
        new("30-002", "Tagged content that can be shown again is shown more than once."),
        new("31-004", "The map from characters to glyphs is of no known kind."),
        new("31-005", "There is no map from characters to glyphs."),
        new("31-006", "The codes of a font are neither embedded nor standard ones."),
        new("31-009", "A font is not embedded."),
        new("31-011", "A glyph is not in the font program."),
        new("31-014", "The list of a font’s glyphs is not right."),
        new("31-016", "A width is not that of the font program."),
        new("31-027", "The characters of a font have no meaning."),
        new("31-028", "A character means U+0000."),
        new("31-029", "A character means U+FEFF or U+FFFE."),
        new("31-030", "A character has no glyph."),
    ];

    private static IEnumerable<Condition> Archive() =>
    [
        new("A 6.1.2a", "The file does not start with its version."),
        new("A 6.1.2b", "The second line does not say that the file is binary."),
        new("A 6.1.3a", "The file has no identifier."),
        new("A 6.1.3b", "The file is encrypted."),
        new("A 6.1.3c", "Something follows the end of the file."),
        new("A 6.1.6", "A hexadecimal string is not made of pairs of digits."),
        new("A 6.1.7a", "A stream does not start on a line of its own."),
        new("A 6.1.7b", "A stream is not as long as it says."),
        new("A 6.1.7c", "A stream lies outside the file."),
        new("A 6.1.7d", "A stream is packed in a way that is not allowed."),
        new("A 6.1.9", "An object’s head is not spaced as it should be."),
        new("A 6.1.12", "There are permissions of an unknown kind."),
        new("A 6.1.13a", "A string is too long."),
        new("A 6.1.13b", "A name is too long."),
        new("A 6.1.13c", "A whole number is too large."),
        new("A 6.1.13d", "Graphics states are saved too deep."),
        new("A 6.1.13e", "A page is too small or too large."),
        new("A 6.2.2a", "Content holds an operator that the format does not know."),
        new("A 6.2.2b", "Content uses a resource that its page does not have."),
        new("A 6.2.3", "There is no output intent with the profile of a screen."),
        new("A 6.2.4", "A colour of a device is used that the output intent does not cover."),
        new("A 6.2.5", "A graphics state changes how the printer prints."),
        new("A 6.2.6", "A rendering intent is unknown."),
        new("A 6.2.8a", "A picture is to be smoothed."),
        new("A 6.2.8b", "A picture has others in its stead."),
        new("A 6.2.8c", "The samples of a picture are of an unusual size."),
        new("A 6.2.9", "There is a program for the printer."),
        new("A 6.2.10a", "A way of blending is unknown."),
        new("A 6.2.10b", "A page with transparency does not say in which colours it is blended."),
        new("A 6.2.11.7", "A character means something of private use."),
        new("A 6.3.1", "An annotation is of a kind that is not allowed."),
        new("A 6.3.2", "An annotation is not printed."),
        new("A 6.3.3", "An annotation does not say how it looks."),
        new("A 6.4", "There is a form."),
        new("A 6.5.1", "There is an action that is not allowed."),
        new("A 6.5.2", "Something happens by itself."),
        new("A 6.6.2a", "The metadata say how they are stored."),
        new("A 6.6.2b", "The metadata are no sound XML."),
        new("A 6.6.2c", "A property of the metadata is neither standard nor described."),
        new("A 6.6.2d", "A property of the metadata is not of its standard type."),
        new("A 6.6.3", "The metadata and the document information differ."),
        new("A 6.6.4", "The metadata do not name PDF/A-2a."),
        new("A 6.7.4", "A language is not written as BCP 47 wants it."),
        new("A 6.8", "There are files inside the file."),
        new("A 6.10", "There are other presentations of the pages."),
        new("A 6.11", "The file makes demands on its reader."),
    ];

    private static IEnumerable<Condition> Format() =>
    [
        new("UA 7.1a", "The document is not marked as tagged."),
        new("UA 7.1b", "There is no structure tree."),
        new("UA 7.2", "The rows of a table do not cover the same columns."),
        new("UA 7.3", "A figure has no bounding box, or one that is not on its page."),
        new("PDF 7.9.6", "Names are not in order."),
        new("PDF 9.6.4", "A font is not named as a subset."),
        new("PDF 9.9", "A font program is not as long as it says."),
        new("PDF 12.3.2", "A link or bookmark leads nowhere."),
        new("PDF 12.3.3", "The bookmarks are not joined up."),
        new("PDF 12.4.2", "The page labels are not in order."),
        new("PDF 14.6", "Marked content does not begin and end in pairs."),
        new("PDF 14.7.2a", "The structure tree is not a tree."),
        new("PDF 14.7.2b", "A note cannot be found by its identifier."),
        new("PDF 14.7.4a", "Marked content is identified twice, or stands inside other such content."),
        new("PDF 14.7.4b", "Content belongs to no element, or to two, or is not on its page."),
        new("PDF 14.7.4c", "The way back from content to elements leads elsewhere."),
        new("PDF 14.11.2", "A page does not say where it is trimmed."),
    ];

    private static IEnumerable<Condition> Promises() =>
    [
        new("Press fonts", "Text is shown in a way that the press does not use."),
        new("Press packed", "The metadata are packed, so that plain tools do not find them."),
        new("Press printing", "Print windows are not asked for true size and the right paper."),
        new("Press empty", "An element other than a cell has no content."),
        new("Press links", "A link lies off its page."),
        new("Press marks", "The drawing of a figure lies outside its bounding box."),
    ];
}
