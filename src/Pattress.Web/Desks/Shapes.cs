using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Papers.Sections;

namespace Pattress.Web.Desks;

/// <summary>Measures of the chosen fixing for its drawing, from the catalogue.</summary>
internal static class Shapes
{
    public static FixingShape? Of(BracketAnswer bracket) =>
        bracket.Fixing is { } id && FixingCatalogue.FromEmbedded.Find(id) is { } size
            ? new(size.Kind.Id, bracket.Holes.Count > 0 ? bracket.Holes[0].DiameterMm : size.HoleMm, size.BearsLongMm, size.ScrewMm, size.HeadMm, size.LengthMm)
            : null;
}
