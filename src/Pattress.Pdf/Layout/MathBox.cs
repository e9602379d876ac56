using Pattress.Pdf.Fonts;

namespace Pattress.Pdf.Layout;

/// <summary>A part of a formula as ink about its own base line: how wide it is, how far it reaches up and down, mm.</summary>
internal sealed record MathBox(double Width, double Up, double Down, IReadOnlyList<Ink> Ink)
{
    public static MathBox Empty { get; } = new(0, 0, 0, []);

    public static MathBox Of(string text, double sizePt)
    {
        string shown = Face.Regular.Shown(text);
        double em = sizePt * Units.MmPerPt;
        return new(Face.Regular.WidthMm(shown, sizePt), 0.74 * em, 0.22 * em, [new Run(0, 0, shown, Face.Regular, sizePt)]);
    }

    /// <summary>The same ink moved to the right and down, mm.</summary>
    public IEnumerable<Ink> At(double x, double down) => Ink.Select(i => Moved(i, x, down));

    /// <summary>Boxes beside one another on one base line.</summary>
    public static MathBox Beside(IReadOnlyList<MathBox> boxes)
    {
        var ink = new List<Ink>();
        double x = 0;
        foreach (var box in boxes)
        {
            ink.AddRange(box.At(x, 0));
            x += box.Width;
        }
        return new(x, boxes.Max(b => b.Up), boxes.Max(b => b.Down), ink);
    }

    private static Ink Moved(Ink ink, double x, double down) => ink switch
    {
        Run r => r with { X = r.X + x, Base = r.Base + down },
        Rule r => r with { X1 = r.X1 + x, Y1 = r.Y1 + down, X2 = r.X2 + x, Y2 = r.Y2 + down },
        Trail t => t with { Points = [.. t.Points.Select(p => (p.X + x, p.Y + down))] },
        _ => throw new ArgumentException(ink.GetType().Name, nameof(ink)),
    };
}
