using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Working;

namespace Pattress.Planning;

/// <summary>What was found for one bracket, before the gates of the verdict.</summary>
/// <param name="AnythingHolds">Probability of all ideas of the wall in which any kind holds.</param>
public sealed record BracketPlan(BracketActions Actions, IReadOnlyList<Idea> Ideas, IReadOnlyList<Candidate> All, Candidate? Picked, double AnythingHolds, BracketAnswer Answer)
{
    /// <summary>The candidate whose working is shown: the one to use, else the one that comes nearest; null where no strength was asked.</summary>
    public Candidate? Shown => Picked ?? Nearest(All);

    /// <summary>The one that is used least in what the wall most likely is: what would hold in something unlikely is no news.</summary>
    internal static Candidate? Nearest(IReadOnlyList<Candidate> all)
    {
        var asked = all.Where(c => c.NearestIn is not null).ToList();
        double likeliest = asked.Select(c => c.NearestIn!.Probability).DefaultIfEmpty(0).Max();
        return asked.Where(c => c.NearestIn!.Probability >= likeliest / 2).MinBy(c => Choice.Rounded(c.NearestUtilisation));
    }

    /// <summary>It aims at a support, and is not sure enough to meet it; else it is the rest of the wall that tells.</summary>
    internal bool WantsSupport(Ask ask) => Picked is { Best.IntoSupport: true } picked && Choice.Rounded(MeetsSupport(Ideas, picked)) < ask.SureWanted;

    /// <summary>Chance that the holes of what was picked meet a support well inside its edges; any other doubt is what the wall is.</summary>
    internal static double MeetsSupport(IReadOnlyList<Idea> ideas, Candidate picked) =>
        ideas.Where(i => i.IntoSupport && picked.Holes.All(i.Columns.Contains)).Sum(i => i.Probability);
}

/// <summary>Turns ideas of the wall and loads of a bracket into its answer.</summary>
public static class BracketPlanner
{
    /// <summary>Bits run this much past the board to make way for what opens, mm (common practice, no source).</summary>
    private const double PastBoardMm = 5;

    /// <param name="wanted">Size to use if it holds, e.g. what the buying chose; null for the plan's own choice.</param>
    public static BracketPlan Plan(BracketActions bracket, IReadOnlyList<Idea> ideas, Ask ask, WallView wall, FixingCatalogue catalogue, string? wanted = null) =>
        Plan(bracket, ideas, ask, wall, catalogue, wanted, null);

    /// <param name="known">What other brackets of the thing have asked already, or null.</param>
    internal static BracketPlan Plan(
        BracketActions bracket, IReadOnlyList<Idea> ideas, Ask ask, WallView wall, FixingCatalogue catalogue, string? wanted, Resisting.KnownSpots? known)
    {
        var choice = new Choice(bracket, ideas, ask, wall.Wall.OldHoles, known);
        var all = choice.All(catalogue);
        var picked = all.FirstOrDefault(c => c.Size.Id == wanted && c.Best is not null) ?? choice.Pick(all);
        HashSet<Idea> held = new(all.SelectMany(c => c.HoldsIn), ReferenceEqualityComparer.Instance);
        double holds = ideas.Where(held.Contains).Sum(i => i.Probability);
        return new(bracket, ideas, all, picked, holds, Answer(bracket, ideas, all, picked, ask, wall, catalogue));
    }

    private static BracketAnswer Answer(
        BracketActions bracket, IReadOnlyList<Idea> ideas, IReadOnlyList<Candidate> all, Candidate? picked, Ask ask, WallView wall, FixingCatalogue catalogue)
    {
        var main = picked?.Best ?? ideas.MaxBy(i => i.Probability)!;
        var shown = picked ?? BracketPlan.Nearest(all);
        var trace = new Trace();
        var hold = shown is null ? null : Retraced(bracket, shown, ask, trace);
        return new(
            bracket.Index, bracket.At, picked?.Size.Id, picked?.Holes.Count ?? 0, hold?.Utilisation ?? 0, hold?.Governs ?? "none",
            picked is null ? 1 : hold!.ProbabilityOfFailure, main.First.BuildUp, picked?.Sure ?? main.Probability, main.IntoSupport, hold?.Basis ?? "none",
            picked is null ? null : NextHole.After(picked.Size, picked.Spot!, catalogue.Sizes)?.Id, picked?.Size.Price ?? 0,
            picked is null ? [] : Holes(bracket, picked, main, wall), Placed(bracket, hold?.Forces ?? []), hold?.ToeMpa ?? 0, hold?.ToeUtilisation ?? 0, hold?.LoadCase ?? "none",
            Alternatives(all, picked), Rejected(all), Section(main, picked), trace.Steps,
            picked is null ? NotHere.Because(ideas, all, shown, hold, ask) : Why(picked, main, ideas, ask), hold?.MeanToPermitted ?? 0, bracket.Plate)
        { Odds = picked is null ? null : Odds.Of(bracket, hold) };
    }

    private static Hold Retraced(BracketActions bracket, Candidate shown, Ask ask, Trace trace)
    {
        var spot = shown.ShownIn!.For(shown.Size.Kind);
        var forces = new Forces(bracket, ask.ToeStrip).Of(shown.Holes, shown.Size.Kind.HoldsBy, spot)!;
        return Planning.Holds.Worst(shown.Size, spot, forces, [.. shown.Holes.Select(i => bracket.Plate.Holes[i])], bracket.Plate, ask, trace);
    }

    private static IReadOnlyList<FixingForce> Placed(BracketActions bracket, IReadOnlyList<FixingForce> forces) =>
        [.. forces.Select(f => f with { At = new(bracket.At.X + f.At.X, bracket.At.Y + f.At.Y) })];

    private static IReadOnlyList<HoleAnswer> Holes(BracketActions bracket, Candidate picked, Idea main, WallView wall) =>
        [.. picked.Holes.Select(i => Hole(bracket, picked.Size, bracket.Plate.Holes[i], picked.Spot!, main.SupportProbability[i], wall))];

    private static HoleAnswer Hole(BracketActions bracket, FixingSize size, Point hole, Spot spot, double support, WallView wall)
    {
        var at = new Point(bracket.At.X + hole.X, bracket.At.Y + hole.Y);
        double diameter = Diameter(size);
        string strip = CableStrips.Touching(wall.Strips, at, diameter).FirstOrDefault()?.Id ?? "";
        return new(at, diameter, Depth(size, spot), Bit(size, spot), support, strip);
    }

    /// <summary>Never deeper than the fixing and the wall allow.</summary>
    private static double Depth(FixingSize size, Spot spot) => Math.Round(size.Kind.HoldsBy switch
    {
        HoldsBy.ThreadInWood or HoldsBy.ThreadInSteel => Math.Min(size.LengthMm, spot.Face.Mean + spot.SupportDepth.Mean),
        HoldsBy.ThreadInPlug or HoldsBy.Sleeve when spot.Behind is not Behind.Dab => spot.MasonryAt.Mean + size.EmbedMm + PastBoardMm,
        HoldsBy.Plug or HoldsBy.Wings when spot.Behind is Behind.Masonry or Behind.Aerated => spot.Face.Mean + size.EmbedMm + PastBoardMm,
        HoldsBy.ThreadInPlug => spot.Face.Mean + Math.Min(size.EmbedMm, spot.Void.Mean),
        _ => spot.Face.Mean + Math.Min(PastBoardMm, spot.Void.Mean),
    }, 1);

    /// <summary>Diameter of the hole, or of the screw that makes its own.</summary>
    internal static double Diameter(FixingSize size) => size.HoleMm > 0 ? size.HoleMm : size.ScrewMm;

    /// <summary>Kind of bit for a size in a spot, or <c>none</c>.</summary>
    internal static string Bit(FixingSize size, Spot spot) => spot.Behind switch
    {
        Behind.Timber => size.Kind.HoldsBy == HoldsBy.ThreadInWood ? "wood" : size.Kind.Bit,
        Behind.Masonry or Behind.Aerated => size.Kind.Bit is "spear" or "core" ? "masonry" : size.Kind.Bit,
        Behind.SteelStud or Behind.SteelLintel => size.Kind.HoldsBy == HoldsBy.ThreadInSteel ? "none" : "metal",
        _ => size.Kind.Bit,
    };

    private static IReadOnlyList<AlternativeAnswer> Alternatives(IReadOnlyList<Candidate> all, Candidate? picked) =>
        [.. all.Where(c => c.Best is not null && c != picked).OrderByDescending(c => Choice.Rounded(c.Sure)).ThenBy(c => c.Size.Id, StringComparer.Ordinal)
            .Select(c => new AlternativeAnswer(c.Size.Id, c.Hold!.Utilisation, c.Hold.Governs, c.Hold.ProbabilityOfFailure, c.Size.Price, c.Sure))];

    private static IReadOnlyList<RejectedAnswer> Rejected(IReadOnlyList<Candidate> all) =>
        [.. all.Where(c => c.Best is null).Select(c => new RejectedAnswer(c.Size.Id, c.Refused!))];

    private static WallSection Section(Idea main, Candidate? picked) =>
        new(main.First.BuildUp, (picked?.Spot ?? main.First).Layers, picked?.Size.Id, picked?.Size.LengthMm ?? 0, picked is null || HouseRules.OnBoard(picked.Spot!.Behind) ? 0 : picked.Size.EmbedMm);

    private static Reason Why(Candidate picked, Idea main, IReadOnlyList<Idea> ideas, Ask ask)
    {
        string doubt = !main.IntoSupport ? "check_wall" : Choice.Rounded(BracketPlan.MeetsSupport(ideas, picked)) < ask.SureWanted ? "check_support" : "check_holds";
        string code = Choice.Rounded(picked.Sure) < ask.SureWanted ? doubt : main.IntoSupport ? "ready_support" : "ready";
        return code switch
        {
            "check_support" => new Reason(code, Said.Percent(picked.Sure), Said.Percent(ask.SureWanted)),
            "check_holds" => new Reason(code, Said.Name(picked.Size.Id), Said.Percent(picked.Sure), Said.Percent(ask.SureWanted)),
            "check_wall" => new Reason(code, Said.Name(main.First.BuildUp), Said.Percent(picked.Sure), Said.Percent(ask.SureWanted)),
            _ => new Reason(code, Said.Name(picked.Size.Id), Said.Name(main.First.BuildUp), Said.Percent(picked.Hold!.Utilisation), Said.Percent(picked.Sure)),
        };
    }
}
