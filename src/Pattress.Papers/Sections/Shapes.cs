using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Papers.Sections;

/// <summary>Measures of the chosen fixing for its drawing, from the catalogue.</summary>
public static class Shapes
{
    /// <summary>The shape of a bracket's fixing, or null when it has none.</summary>
    public static FixingShape? Of(BracketAnswer bracket) =>
        bracket.Fixing is { } id && FixingCatalogue.FromEmbedded.Find(id) is { } size
            ? new(size.Kind.Id, bracket.Holes.Count > 0 ? bracket.Holes[0].DiameterMm : size.HoleMm, size.BearsLongMm, size.ScrewMm, size.HeadMm, size.LengthMm)
            : null;
}
