using Pattress.Jobs;
using Pattress.Working;
using static System.Math;

namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>Pictures and mirrors: on one hook, on two, on a wire over one hook, or on a wire between two.</summary>
internal abstract class Hanging : FixtureModel
{
    // Hooks sit about 50 mm below the top edge, and two of them three fifths of the width apart (common practice, no source).
    private const double BelowTopMm = 50, HooksApart = 0.6;

    // A wire that nobody measured sags by a sixth of its span (assumed).
    private const double SagOfSpan = 1.0 / 6;

    public override Hung Hang(Site site)
    {
        var e = site.Entries;
        double mass = MassKg(site), arm = site.Arm(), weight = site.Weight(mass);
        string hang = e.Word("hang");
        double spacing = e.Entered("hook_spacing_mm") ?? HooksApart * e.Number("width_mm");
        var stand = site.Stand(() => Hooks(site.Middle, hang, spacing));
        double below = Max(e.Number("height_mm") - BelowTopMm, e.Number("height_mm") / 2);
        var body = new Body(stand.Brackets, arm, site.Surface == Surface.Wall ? site.Middle.Y - below : null);
        var middle = new Push(site.Middle.X, site.Middle.Y - below / 2, arm, default);
        var hangs = body.Carry(middle with { Force = site.Surface.Down(weight) });
        if (hang is "wire" or "wire_between_hooks") hangs = hangs.Plus(Wire(site, stand, weight, spacing, arm, hang));
        // On one hook it swings, so that only the force comes to the hook.
        var hand = stand.Count == 1 ? middle with { X = stand.Brackets[0].X, Y = stand.Brackets[0].Y } : middle;
        return new(mass, stand, arm, [
            new("hangs", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0),
            .. site.Pulls(body, hangs, hand, People.DownAndOut)]) { Cautions = e.Number("glass_mm") > 0 ? [Site.Caution("glass")] : [] };
    }

    private static IEnumerable<Point> Hooks(Point middle, string hang, double spacing) =>
        hang is "two_hooks" or "wire_between_hooks" ? Layout.Line(middle, spacing, 0, 2) : [middle];

    private static double MassKg(Site site)
    {
        if (site.Entries.Entered("mass_kg") is { } weighed) return weighed;
        double width = site.Entries.Number("width_mm") / 1000, height = site.Entries.Number("height_mm") / 1000;
        double glass_mm = site.Entries.Number("glass_mm"), frame = site.Entries.Number("frame_kg_m2");
        double glass = site.Entries.Table("glass");
        return site.Step("m", width * height * (glass * glass_mm + frame), "kg", Weights.Of("glass").Source,
            [In.Of(width), In.Of(height), In.Of(glass), In.Of(glass_mm), In.Of(frame)]);
    }

    // The wire pulls its two hooks together; a wire over one hook strains only itself and its rings.
    private static IReadOnlyList<Wrench> Wire(Site site, Stand stand, double W, double spacing, double arm, string hang)
    {
        double sag = site.Entries.Entered("sag_mm") ?? Assumed(site, spacing * SagOfSpan), half = spacing / 2;
        site.Step("T_wire", W / 2 * Sqrt(half * half + sag * sag) / sag, "N", "statics", [In.Of(W), In.Of(half), In.Of(sag)]);
        double H = site.Step("H_wire", W / 2 * half / sag, "N", "statics", [In.Of(W), In.Of(half), In.Of(sag)]);
        if (hang == "wire" || stand.Count != 2) return Wrenches.None(stand.Count);
        double left = Sign(stand.Brackets[1].X - stand.Brackets[0].X);
        return [.. stand.Brackets.Select((b, i) => new Push(b.X, b.Y, arm, site.Surface.Along(i == 0 ? left * H : -left * H)).About(b.X, b.Y))];
    }

    private static double Assumed(Site site, double sag)
    {
        site.Entries.Note("sag_mm", new("assumed_entry", [Said.Name("field.sag_mm"), Said.Length(sag)], "assumed: a sixth of the span"));
        return sag;
    }
}

/// <summary>A picture.</summary>
internal sealed class Picture : Hanging
{
    public override string Kind => "picture";
}

/// <summary>A mirror.</summary>
internal sealed class Mirror : Hanging
{
    public override string Kind => "mirror";
}
