using System.Runtime.InteropServices;

namespace Pattern.Press.Typesetting.Fonts;

/// <summary>The few functions of the HarfBuzz library that its .NET wrapper has no names for.</summary>
internal static partial class HarfBuzzNative
{
    /// <summary>Leaves instructions for coarse screens out.</summary>
    public const uint NoHinting = 0x01;

    /// <summary>Keeps glyph numbers, so that shaped text needs no translation.</summary>
    public const uint RetainGlyphIds = 0x02;

    /// <summary>Keeps the box that stands for missing glyphs.</summary>
    public const uint NotdefOutline = 0x40;

    /// <summary>Adds no glyphs that features could lead to: the text is shaped already.</summary>
    public const uint NoLayoutClosure = 0x200;

    /// <summary>The set of tables to leave out.</summary>
    public const int DropTables = 3;

    private const string Library = "libHarfBuzzSharp";

    [LibraryImport(Library, EntryPoint = "hb_subset_input_create_or_fail")]
    public static partial nint InputCreate();

    [LibraryImport(Library, EntryPoint = "hb_subset_input_destroy")]
    public static partial void InputDestroy(nint input);

    [LibraryImport(Library, EntryPoint = "hb_subset_input_set_flags")]
    public static partial void InputSetFlags(nint input, uint flags);

    [LibraryImport(Library, EntryPoint = "hb_subset_input_glyph_set")]
    public static partial nint InputGlyphSet(nint input);

    [LibraryImport(Library, EntryPoint = "hb_subset_input_set")]
    public static partial nint InputSet(nint input, int kind);

    [LibraryImport(Library, EntryPoint = "hb_subset_or_fail")]
    public static partial nint Subset(nint face, nint input);

    [LibraryImport(Library, EntryPoint = "hb_set_add")]
    public static partial void SetAdd(nint set, uint value);

    [LibraryImport(Library, EntryPoint = "hb_face_reference_blob")]
    public static partial nint FaceReferenceBlob(nint face);

    [LibraryImport(Library, EntryPoint = "hb_face_destroy")]
    public static partial void FaceDestroy(nint face);

    [LibraryImport(Library, EntryPoint = "hb_blob_get_data")]
    public static partial nint BlobGetData(nint blob, out uint length);

    [LibraryImport(Library, EntryPoint = "hb_blob_destroy")]
    public static partial void BlobDestroy(nint blob);

    [LibraryImport(Library, EntryPoint = "hb_font_make_immutable")]
    public static partial void FontMakeImmutable(nint font);
}
