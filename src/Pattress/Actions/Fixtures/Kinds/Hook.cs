namespace Pattress.Actions.Fixtures.Kinds;

/// <summary>One hook and what hangs on it.</summary>
internal sealed class Hook : FixtureModel
{
    public override string Kind => "hook";

    public override Hung Hang(Site site)
    {
        double mass = site.Entries.Number("hang_kg"), arm = site.Arm();
        var stand = site.Stand(() => [site.Middle]);
        var body = new Body(stand.Brackets, arm);
        var at = new Push(site.Middle.X, site.Middle.Y, arm, default);
        var hangs = body.Carry(at with { Force = site.Surface.Down(site.Weight(mass)) });
        return new(mass, stand, arm, [
            new("hangs", LoadDuration.Permanent, hangs, Wrenches.None(stand.Count), 0),
            .. site.Pulls(body, hangs, at, People.DownAndOut)]);
    }
}
