using Pattress.Actions;
using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>The cautions that fit a job. They never depend on the verdict: a ready plan is drilled by people too.</summary>
public static class Cautions
{
    /// <summary>Year from which asbestos is no longer expected in board and coatings (common practice, no source: banned in 1999).</summary>
    public const int AsbestosYear = 2000;

    /// <summary>Year from which lead paint is no longer expected (common practice, no source).</summary>
    public const int LeadPaintYear = 1980;

    /// <summary>Cautions of the whole job, in a fixed order.</summary>
    public static IReadOnlyList<Reason> Of(Job job, IReadOnlyList<ItemAnswer> items)
    {
        var said = new List<Reason> { new("caution_cables"), new("caution_pipes"), new("caution_eyes_dust"), new("caution_ladder") };
        if (MayHold(job.Settings, AsbestosYear)) said.Add(new("caution_asbestos", Said.Year(AsbestosYear)));
        if (MayHold(job.Settings, LeadPaintYear)) said.Add(new("caution_lead_paint", Said.Year(LeadPaintYear)));
        if (job.Walls.Any(w => w.OtherSide is "neighbour")) said.Add(new("caution_party_wall"));
        if (items.Any(i => i.Class == ConsequenceClass.Overhead)) said.Add(new("caution_overhead"));
        if (items.Any(i => i.Class == ConsequenceClass.HoldsPerson)) said.Add(new("caution_person"));
        said.Add(new("caution_local_rules"));
        return said;
    }

    /// <summary>True when the house is older than the year or nobody knows.</summary>
    public static bool MayHold(Settings settings, int year) => settings.YearBuilt is not { } built || built < year;
}
