namespace Pattress.Supports;

/// <summary>Finds what in a scan cannot be, and readings that contradict each other.</summary>
public static class LineScanCheck
{
    /// <summary>Two readings nearer than this cannot find different things, mm.</summary>
    private const double SamePlaceMm = 5;

    /// <summary>
    /// Readings that cannot all be true: one hole found the support where another found none, or supports were met too
    /// close together. The belief still stands, with both at their rates; the contradiction is named beside it.
    /// </summary>
    public static IReadOnlyList<LineContradiction> Contradictions(LineScan scan, LinePriors priors)
    {
        var holes = scan.Readings.OfType<ThinHole>().OrderBy(h => h.AtMm).ThenBy(h => h.Id, StringComparer.Ordinal).ToList();
        List<LineContradiction> found = [];
        for (int i = 0; i < holes.Count; i++)
            for (int j = i + 1; j < holes.Count && holes[j].AtMm - holes[i].AtMm < priors.TimberWidthMm; j++)
                if (Contradicts(holes, i, j) && !Noggin(holes[i], holes[j], NogginRows.Of(scan, priors))) found.Add(Name(holes[i], holes[j]));
        found.AddRange(WoodAllAlong(holes, priors));
        return found;
    }

    /// <summary>Holes of one height that all met wood, each this near the last: farther apart two studs may stand, mm.</summary>
    private const double RunMm = 100;

    /// <summary>Wood over more than two studs side by side take up is no stud: a noggin, a rail or a board behind the face, or mis-felt holes.</summary>
    private static IEnumerable<LineContradiction> WoodAllAlong(List<ThinHole> holes, LinePriors priors)
    {
        List<ThinHole> run = [];
        foreach (var hole in holes.Append(new ThinHole("", double.PositiveInfinity, HoleMet.Void)))
        {
            if (run.Count > 0 && (!IsSupport(hole) || hole.AtMm - run[^1].AtMm > RunMm || !SameHeight(hole, run[^1])))
            {
                if (run.Count >= 3 && run[^1].AtMm - run[0].AtMm > 2 * priors.TimberWidthMm)
                    yield return new(new("holes_all_wood", Said.Count(run.Count), Said.Length(run[0].AtMm), Said.Length(run[^1].AtMm)), [.. run.Select(h => h.Id)]);
                run.Clear();
            }
            if (IsSupport(hole)) run.Add(hole);
        }
    }

    private static bool SameHeight(ThinHole a, ThinHole b) => Math.Abs(a.HeightMm - b.HeightMm) <= RunMm;

    /// <summary>Where one met wood at the height of a row of noggins, the other may well have missed it above or below.</summary>
    private static bool Noggin(ThinHole a, ThinHole b, NogginRows rows) =>
        !SameHeight(a, b) && IsSupport(a) != IsSupport(b) && rows.At((IsSupport(a) ? a : b).HeightMm) > 0.02;

    /// <summary>Different findings at one place, or a void between two holes that met one support's width of wood.</summary>
    private static bool Contradicts(List<ThinHole> holes, int i, int j)
    {
        // Laths and foam lie in front of a support or of none.
        if (holes[i].Met is HoleMet.Passed || holes[j].Met is HoleMet.Passed) return false;
        bool support = IsSupport(holes[i]), other = IsSupport(holes[j]);
        if (holes[j].AtMm - holes[i].AtMm <= SamePlaceMm) return support != other;
        return support && other && holes.Skip(i + 1).Take(j - i - 1).Any(h => !IsSupport(h) && h.Met != HoleMet.Passed);
    }

    private static bool IsSupport(ThinHole h) => h.Met is HoleMet.Support or HoleMet.Metal;

    private static LineContradiction Name(ThinHole a, ThinHole b) =>
        new(new("holes_disagree", Said.Length(a.AtMm), Said.Name(Words(a.Met)), Said.Length(b.AtMm), Said.Name(Words(b.Met))), [a.Id, b.Id]);

    private static string Words(HoleMet met) => met switch
    {
        HoleMet.Support or HoleMet.Metal => "met.support", HoleMet.Void => "met.void", HoleMet.Dab => "met.dab", HoleMet.Masonry => "met.masonry", _ => "met.other",
    };
}
