namespace Pattern.Press.Structures.Reading;

/// <summary>A place in a file: line and column from 1, or 0 where they do not apply.</summary>
public readonly record struct Place(string File, int Line = 0, int Column = 0);
