namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>The cleat that keeps a blind's cord out of reach.</summary>
internal sealed class CordCleat : FixtureModel
{
    private const double MassKg = 0.05, ArmMm = 15;

    /// <summary>Least height above the floor of a cord or of its tensioner, EN 13120 (secondary source).</summary>
    private const double ReachMm = 1500;

    public override string Kind => "cord_cleat";

    public override Hung Hang(Site site)
    {
        double arm = ArmMm + site.Entries.Number("packing_mm");
        var stand = site.Stand(() => [site.Middle]);
        var body = new Body(stand.Brackets, arm);
        var at = new Push(site.Middle.X, site.Middle.Y, arm, default);
        var hangs = body.Carry(at with { Force = site.Surface.Down(site.Weight(MassKg)) });
        return new(MassKg, stand, arm, [
            new("hangs", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0),
            .. site.Pulls(body, hangs, at, People.AllWays)]) { Cautions = [.. Cautions(site)] };
    }

    private static IEnumerable<Reason> Cautions(Site site)
    {
        yield return Site.Caution("cords");
        double height = site.Entries.Entered("height_mm") ?? site.Middle.Y;
        if (height < ReachMm) yield return Site.Caution("cord_within_reach", Said.Length(height), Said.Length(ReachMm));
    }
}
