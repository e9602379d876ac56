using Pattress.Actions.Fixtures.Kinds;
using Pattress.Jobs;
using Pattress.Working;

namespace Pattress.Actions.Fixtures;

/// <summary>Turns a fixture into loads on its brackets.</summary>
public static class FixtureLoads
{
    private const double TwoPeopleKg = 25;

    private static readonly Dictionary<string, FixtureModel> Models = new FixtureModel[]
    {
        new Hook(), new CordCleat(), new Picture(), new Mirror(), new Screen(), new Cabinet(), new Radiator(), new TowelRail(),
        new CoatRack(), new StairGate(), new Shutter(), new GrabRail(), new Free(),
        new CurtainPole(), new CurtainTrack(), new RollerBlind(), new RomanBlind(), new VenetianBlind(), new VerticalBlind(),
        new Pelmet(), new Shelf(), new FloatingShelf(), new Handrail(),
    }.ToDictionary(m => m.Kind, StringComparer.Ordinal);

    /// <summary>
    /// The loads on each bracket of a fixture that passed the door. A kind that belongs to a licensed trade has no brackets
    /// and carries the reason among its cautions.
    /// </summary>
    /// <exception cref="ArgumentException">The kind is not in the catalogue.</exception>
    public static FixtureActions Of(Fixture fixture, Wall wall, Settings settings, Trace? trace = null)
    {
        var kind = FixtureCatalogue.Find(fixture.What) ?? throw new ArgumentException($"no kind '{fixture.What}'", nameof(fixture));
        if (kind.Refusal is { } refusal) return Refused(fixture, kind, refusal);
        var site = new Site(kind, fixture, wall, settings, trace);
        var hung = Models[kind.Id].Hang(site);
        var raised = Raised(hung.Class ?? kind.Class, site, fixture);
        var plate = Plates.Of(kind, site.Entries, hung.ArmMm);
        var brackets = hung.Stand.Brackets.Select((at, i) => new BracketActions(i, at, plate, [.. hung.Cases.Select(c => Case(c, i, settings))]));
        return new(fixture.Id, raised, hung.MassKg, [.. brackets], [.. site.Entries.Assumed], [.. hung.Cautions, .. General(site, hung, raised, fixture), .. Overlapping(hung.Stand.Brackets, plate)]);
    }

    private static LoadCase Case(Draft draft, int i, Settings settings)
    {
        // Adding nothing turns -0 into 0, which documents show alike.
        Wrench g = draft.Permanent[i] + default(Wrench), q = draft.Variable[i] + default(Wrench);
        return new(draft.Code, draft.Duration, g, q, Combination.Design(g, q, settings) + default(Wrench), draft.Cov);
    }

    private static FixtureActions Refused(Fixture fixture, FixtureKind kind, Reason refusal) =>
        new(fixture.Id, kind.Class, fixture.Numbers.GetValueOrDefault("mass_kg"), [], [], [refusal]);

    // From a ceiling it falls on a head; over a bed it falls on somebody asleep.
    private static ConsequenceClass Raised(ConsequenceClass kind, Site site, Fixture fixture)
    {
        bool above = site.Surface == Surface.Ceiling && !site.Recessed;
        var raised = above && kind < ConsequenceClass.Overhead ? ConsequenceClass.Overhead : kind;
        return fixture.OverBed && raised < ConsequenceClass.Overhead ? raised + 1 : raised;
    }

    /// <summary>The first two brackets whose plates would lie on one another.</summary>
    private static IEnumerable<Reason> Overlapping(IReadOnlyList<Point> brackets, BracketPlate plate)
    {
        double width = 2 * plate.Outline.Max(p => p.X), height = 2 * plate.Outline.Max(p => p.Y);
        for (int i = 1; i < brackets.Count; i++)
            for (int j = 0; j < i; j++)
            {
                double x = Math.Abs(brackets[i].X - brackets[j].X), y = Math.Abs(brackets[i].Y - brackets[j].Y);
                if (x < width && y < height) return [Site.Caution("brackets_overlap", Said.Count(j + 1), Said.Count(i + 1), Said.Length(Math.Sqrt(x * x + y * y)))];
            }
        return [];
    }

    private static IEnumerable<Reason> General(Site site, Hung hung, ConsequenceClass raised, Fixture fixture)
    {
        if (raised == ConsequenceClass.Overhead) yield return Site.Caution("overhead");
        if (raised == ConsequenceClass.HoldsPerson) yield return Site.Caution("person");
        if (fixture.OverBed) yield return Site.Caution("over_bed");
        if (site.Recessed) yield return Site.Caution("recess_edge");
        if (hung.MassKg > TwoPeopleKg) yield return Site.Caution("two_people", Said.Mass(hung.MassKg));
    }
}
