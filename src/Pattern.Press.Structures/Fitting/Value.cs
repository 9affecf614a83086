using Pattern.Press.Measure;

namespace Pattern.Press.Structures.Fitting;

/// <summary>A value of a structure: what a parameter is set to, or what a formula gives.</summary>
public abstract record Value;

/// <summary>A length.</summary>
public sealed record LengthValue(Length Length) : Value;

/// <summary>The sides of a rectangle.</summary>
public sealed record SizeValue(Size Size) : Value;

/// <summary>Several lengths, such as the marks to score at.</summary>
public sealed record LengthListValue(IReadOnlyList<Length> Lengths) : Value;

/// <summary>A plain number, such as how many to cut.</summary>
public sealed record NumberValue(decimal Number) : Value;

/// <summary>Yes or no.</summary>
public sealed record FlagValue(bool Flag) : Value;

/// <summary>One of a parameter's choices, or a name.</summary>
public sealed record WordValue(string Word) : Value;
