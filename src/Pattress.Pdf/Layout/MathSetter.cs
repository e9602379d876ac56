using Pattress.Working;

namespace Pattress.Pdf.Layout;

/// <summary>Sets formulas: fractions, roots, indices and powers. Sizes shrink by steps and stay legible.</summary>
internal static class MathSetter
{
    // Shares of an em: scripts, their shifts, the height of a fraction's bar, and white.
    private const double Script = 0.72, Fraction = 0.9, Raise = 0.36, Lower = 0.2, Axis = 0.26, White = 0.1, Sign = 0.22;
    private const double LeastPt = 5.5, BarMm = 0.18, BetweenMm = 0.7;

    /// <summary>Lines of a formula, broken before signs so that each is no wider than so much; a piece that still is, is set smaller.</summary>
    public static MathBox Lines(IReadOnlyList<Setting> lines, double widthMm, double sizePt)
    {
        var set = lines.SelectMany(l => Broken(l, widthMm, sizePt)).ToList();
        double up = set[0].Up, base0 = 0;
        var ink = new List<Ink>();
        for (int i = 0; i < set.Count; i++)
        {
            if (i > 0) base0 += set[i - 1].Down + set[i].Up + BetweenMm;
            ink.AddRange(set[i].At(0, base0));
        }
        return new(set.Max(s => s.Width), up, base0 + set[^1].Down, ink);
    }

    private static IEnumerable<MathBox> Broken(Setting line, double width, double size)
    {
        var now = new List<MathBox>();
        foreach (var piece in FormulaSetting.Pieces(line).Select(p => Fitting(p, width, size)))
        {
            if (now.Count > 0 && now.Sum(b => b.Width) + piece.Width > width) { yield return MathBox.Beside(now); now = []; }
            now.Add(piece);
        }
        yield return MathBox.Beside(now);
    }

    private static MathBox Fitting(Setting piece, double width, double size)
    {
        var box = Of(piece, size);
        return box.Width <= width ? box : Of(piece, Math.Max(LeastPt * 0.8, size * width / box.Width));
    }

    internal static MathBox Of(Setting setting, double size)
    {
        double em = size * Units.MmPerPt;
        return setting switch
        {
            SetText t => MathBox.Of(t.Text.Replace('\u00A0', ' '), size),
            SetSign s => Signed(s.Sign, size, em),
            SetRow r => MathBox.Beside([.. r.Parts.Select(p => Of(p, size))]),
            SetScript s => Scripted(s, size, em),
            SetFraction f => Over(f, size, em),
            SetRoot r => Root(r, size, em),
            SetFence f => Fence(f, size, em),
            _ => throw new ArgumentException(setting.GetType().Name, nameof(setting)),
        };
    }

    private static double Smaller(double size, double by) => Math.Max(LeastPt, size * by);

    private static MathBox Signed(string sign, double size, double em)
    {
        var box = MathBox.Of(sign, size);
        double white = sign.Contains(' ', StringComparison.Ordinal) ? 0 : sign == "·" ? Sign * em / 2 : Sign * em;
        return new(box.Width + 2 * white, box.Up, box.Down, [.. box.At(white, 0)]);
    }

    private static MathBox Scripted(SetScript s, double size, double em)
    {
        var of = Of(s.Of, size);
        double small = Smaller(size, Script);
        var below = s.Below.Length > 0 ? MathBox.Of(s.Below, small) : MathBox.Empty;
        var above = s.Above is { } a ? Of(a, small) : MathBox.Empty;
        // A power stands at the shoulder of whatever it raises, clear of what stands below it.
        double raise = Math.Max(Raise * em, of.Up - 0.6 * em) + above.Down * 0.5, gap = 0.04 * em;
        var ink = of.Ink.Concat(below.At(of.Width + gap, Lower * em)).Concat(above.At(of.Width + gap, -raise));
        return new(of.Width + gap + Math.Max(below.Width, above.Width), Math.Max(of.Up, above.Up + raise), Math.Max(of.Down, s.Below.Length > 0 ? below.Down + Lower * em : 0), [.. ink]);
    }

    private static MathBox Over(SetFraction f, double size, double em)
    {
        var (over, under) = (Of(f.Over, Smaller(size, Fraction)), Of(f.Under, Smaller(size, Fraction)));
        double width = Math.Max(over.Width, under.Width) + 2 * White * em, bar = -Axis * em, gap = White * em + BarMm / 2;
        double up = bar - gap - over.Down, down = bar + gap + under.Up;
        var ink = over.At((width - over.Width) / 2, up).Append(new Rule(White * em / 2, bar, width - White * em / 2, bar, BarMm))
            .Concat(under.At((width - under.Width) / 2, down));
        return new(width, over.Up - up, down + under.Down, [.. ink]);
    }

    private static MathBox Root(SetRoot r, double size, double em)
    {
        var of = Of(r.Of, size);
        var index = r.Index.Length > 0 ? MathBox.Of(r.Index, Smaller(size, 0.6)) : MathBox.Empty;
        double before = Math.Max(0, index.Width - 0.2 * em), hook = 0.55 * em, top = -of.Up - White * em, foot = of.Down;
        (double, double)[] sign = [(before, top * 0.4), (before + 0.15 * em, top * 0.45), (before + 0.32 * em, foot), (before + hook, top), (before + hook + of.Width + White * em, top)];
        var ink = new Ink[] { new Trail(sign, BarMm) }.Concat(index.At(0, top * 0.55)).Concat(of.At(before + hook + 0.04 * em, 0));
        return new(before + hook + of.Width + 1.5 * White * em, -top + BarMm, foot, [.. ink]);
    }

    // A fence is a letter as high as what it holds.
    private static MathBox Fence(SetFence f, double size, double em)
    {
        var of = Of(f.Of, size);
        double high = Math.Max(1, (of.Up + of.Down) / (0.96 * em)), down = high > 1 ? (of.Down - of.Up) / 2 + 0.26 * em * high : 0;
        MathBox left = MathBox.Of(f.Left, size * high), right = MathBox.Of(f.Right, size * high);
        var ink = left.At(0, down).Concat(of.At(left.Width, 0)).Concat(right.At(left.Width + of.Width, down));
        return new(left.Width + of.Width + right.Width, Math.Max(of.Up, left.Up - down), Math.Max(of.Down, left.Down + down), [.. ink]);
    }
}
