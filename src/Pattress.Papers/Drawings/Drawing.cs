using Pattress.Jobs;

namespace Pattress.Papers.Drawings;

/// <summary>Turns a reason into words; the text layer does it.</summary>
public delegate string Say(Reason reason);

/// <summary>How large a drawing is put on the screen or paper, in px (1/96 in).</summary>
/// <param name="WidthPx">Width to fill.</param>
/// <param name="TextPx">Height of its letters: room is kept for them.</param>
public readonly record struct Sizing(double WidthPx, double TextPx)
{
    /// <summary>A phone held upright.</summary>
    public static Sizing Phone { get; } = new(328, 13);
}

/// <summary>A drawing to scale: a model that several renderers show.</summary>
/// <param name="Id">Short text, unique on a page.</param>
/// <param name="View">What is seen, in mm.</param>
/// <param name="PxPerMm">Scale.</param>
public sealed record Drawing(string Id, string Title, Rect View, double PxPerMm, IReadOnlyList<Group> Groups)
{
    /// <summary>The facts of all marks, by group, in the order drawn.</summary>
    public IEnumerable<(string Group, Fact Fact)> Facts =>
        Groups.SelectMany(g => g.Marks.Where(m => m.Fact is not null).Select(m => (g.Title, m.Fact!)));

    /// <summary>Where a place on the rendered drawing (px from its upper left corner) lies in mm.</summary>
    public Point ToMm(double xPx, double yPx) => new(View.X + xPx / PxPerMm, View.Top - yPx / PxPerMm);
}
