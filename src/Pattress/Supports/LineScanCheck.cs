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
                if (Contradicts(holes, i, j)) found.Add(Name(holes[i], holes[j]));
        return found;
    }

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
        HoleMet.Support or HoleMet.Metal => "support", HoleMet.Void => "void", HoleMet.Dab => "dab", HoleMet.Masonry => "masonry", _ => "other",
    };
}
