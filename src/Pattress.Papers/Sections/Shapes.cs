using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Papers.Sections;

/// <summary>Measures of the chosen fixing for its drawing, from the catalogue.</summary>
public static class Shapes
{
    /// <summary>The shape of a bracket's fixing, or null when it has none.</summary>
    public static FixingShape? Of(BracketAnswer bracket) =>
        bracket.Fixing is { } id && FixingCatalogue.FromEmbedded.Find(id) is { } size
            ? Of(size) with { HoleMm = bracket.Holes.Count > 0 ? bracket.Holes[0].DiameterMm : size.HoleMm }
            : null;

    /// <summary>Of a kind and size of the catalogue; of one that is not there, a plain screw.</summary>
    public static FixingShape Of(string id) =>
        FixingCatalogue.FromEmbedded.Find(id) is { } size ? Of(size) : new("wood_screw", 4, 0, 4, 8, 40);

    private static FixingShape Of(FixingSize size) => new(size.Kind.Id, size.HoleMm, size.BearsLongMm, size.ScrewMm, size.HeadMm, size.LengthMm);
}
