using Pattress.Jobs;

namespace Pattress.Papers.Drawings;

/// <summary>Where a text stands to its point.</summary>
public enum Anchor { Start, Middle, End }

/// <summary>One row of the table that says what the drawing shows: the same facts for those who do not see it.</summary>
public sealed record Fact(string What, string Where, string Says);

/// <summary>Something drawn, in mm with x right and y up. <see cref="Class"/> names its role; the theme gives it its look.</summary>
public abstract record Mark(string Class)
{
    /// <summary>What it says, for the table; null for marks that only carry another mark's fact.</summary>
    public Fact? Fact { get; init; }
}

public sealed record LineMark(string Class, Point From, Point To) : Mark(Class);

/// <summary>A polyline, or a polygon when closed.</summary>
public sealed record PathMark(string Class, IReadOnlyList<Point> Points, bool Closed = false) : Mark(Class);

public sealed record RectMark(string Class, Rect Area) : Mark(Class);

/// <summary>An area as dark as the thing is likely: strength 0 to 1.</summary>
public sealed record BandMark(string Class, Rect Area, double Strength) : Mark(Class);

public sealed record CircleMark(string Class, Point At, double RadiusMm) : Mark(Class);

/// <summary>Parallel strokes over an area, <paramref name="SpacingMm"/> apart; a negative slope leans the other way.</summary>
public sealed record HatchMark(string Class, Rect Area, double SpacingMm, double Slope = 1) : Mark(Class);

/// <summary>A text. <paramref name="Upright"/> turns it to read from below to above.</summary>
public sealed record TextMark(string Class, Point At, string Text, Anchor Anchor = Anchor.Start, bool Upright = false) : Mark(Class);

/// <summary>Marks that belong together, under a heading of the table.</summary>
public sealed record Group(string Class, string Title, IReadOnlyList<Mark> Marks);
