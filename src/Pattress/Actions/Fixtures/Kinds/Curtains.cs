using Pattress.Actions.Beams;
using Pattress.Working;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>Cloth of a curtain: its mass, and how it hangs on its rail.</summary>
internal static class Curtains
{
    // Drawn back, a pair of curtains takes an eighth of the rail on each side, a single one a quarter (common practice, no source).
    private const double StackOfPair = 1.0 / 8, StackOfOne = 1.0 / 4;

    /// <summary>Mass in kg: width times fullness times drop and hems times the weights of cloth, lining and interlining.</summary>
    public static double ClothKg(Site site, double widthMm)
    {
        var e = site.Entries;
        double width = widthMm / 1000, fullness = e.Number("fullness"), drop = e.Number("drop_mm") / 1000, hem = e.Number("hem_mm") / 1000;
        double fabric = FabricGM2(e), lining = e.Table("lining." + e.Word("lining")), interlining = e.Table("interlining." + e.Word("interlining"));
        return site.Step("m_cloth", width * fullness * (drop + hem) * (fabric + lining + interlining) / 1000, "kg", "arithmetic",
            [In.Of(width), In.Of(fullness), In.Of(drop), In.Of(hem), In.Of(fabric), In.Of(lining), In.Of(interlining)]);
    }

    /// <summary>Weight of the cloth by the area: weighed, else by its word.</summary>
    public static double FabricGM2(Entries e) => e.Entered("fabric_g_m2") ?? e.Table("fabric." + e.Word("fabric"));

    /// <summary>Closed, open, drawn to either side, and wherever the stacks are worst for each bracket.</summary>
    public static IReadOnlyList<Draft> Cases(Site site, Rail rail, CurtainLoad load, double arm)
    {
        double all = load.RailN + load.ClothN;
        var down = site.Surface.Down(all);
        UniformLoad own = new(0, rail.Length, load.RailN / all / rail.Length);
        double stack = Stack(site, rail, load.Stacks), share = load.StackN / all;
        Draft Case(string code, params UniformLoad[] cloth) => Hanging(code, rail.Standing([own, .. cloth], down, arm));
        UniformLoad At(double from, double length, double part) => new(from, from + length, part * share / length);
        double both = load.Stacks * stack, end = rail.Length;
        return
        [
            Case("curtain_closed", new UniformLoad(0, rail.Length, load.ClosedN / all / rail.Length)),
            .. load.Stacks == 2 ? [Case("curtain_open", At(0, stack, 0.5), At(end - stack, stack, 0.5))] : Array.Empty<Draft>(),
            Case("curtain_left", At(0, both, 1)),
            Case("curtain_right", At(end - both, both, 1)),
            Hanging("curtain_moving", rail.Moving([own], [.. Enumerable.Repeat(new PatchLoad(stack, share / load.Stacks / stack), load.Stacks)], down, arm)),
        ];
    }

    private static Draft Hanging(string code, IReadOnlyList<Wrench> hangs) =>
        new(code, LoadDuration.Permanent, hangs, Wrenches.None(hangs.Count), 0);

    private static double Stack(Site site, Rail rail, int stacks)
    {
        double most = rail.Length / stacks;
        if (site.Entries.Entered("stack_mm") is { } measured) return Math.Min(measured, most);
        double taken = rail.Length * (stacks == 2 ? StackOfPair : StackOfOne);
        site.Entries.Note("stack_mm", new("assumed_entry", [Said.Name("field.stack_mm"), Said.Length(taken)], "common practice, no source"));
        return taken;
    }
}

/// <summary>What hangs on a rail, N: the rail itself, the cloth in all, the part of it on this rail when closed, and what stacks here in how many stacks.</summary>
internal sealed record CurtainLoad(double RailN, double ClothN, double ClosedN, double StackN, int Stacks);
