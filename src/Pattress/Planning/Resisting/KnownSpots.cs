using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Planning.Resisting;

/// <summary>
/// What is asked again and again of a size at a spot while one thing is planned: whether it may be used there, and what it carries. Neither depends on
/// the place of the bracket, nor, where no board holds it, on which of its holes are used. Spots and sizes are told apart as objects.
/// </summary>
/// <param name="plate">Of all the thing's brackets.</param>
internal sealed class KnownSpots(Ask ask, BracketPlate plate)
{
    /// <summary>A batten, a rack or a bar takes from what a screw reaches; a thinner plate is within the margin for what is not known of the face, mm (assumed).</summary>
    private const double ThickMm = 10;

    private readonly Dictionary<Spot, Dictionary<FixingSize, Entry>> _spots = new(ReferenceEqualityComparer.Instance);

    private sealed class Entry
    {
        public bool Asked { get; set; }

        public Reason? Refusal { get; set; }

        public List<(int Count, double Spacing, LoadDuration Duration, FixingCarries Carries)> Carries { get; } = [];
    }

    /// <summary>Why the size is not used at the spot, or null.</summary>
    public Reason? Refusal(FixingSize size, Spot spot)
    {
        var entry = Of(size, spot);
        if (!entry.Asked) (entry.Asked, entry.Refusal) = (true, Fit.Refusal(size, spot, plate.ThicknessMm >= ThickMm ? plate.ThicknessMm : 0) ?? HouseRules.Refusal(size, spot, ask));
        return entry.Refusal;
    }

    /// <summary>What one of the fixings carries; the same as <see cref="Resistances.Of"/>.</summary>
    public FixingCarries Carries(FixingSize size, Spot spot, LoadDuration duration, IReadOnlyList<Point> holes)
    {
        var known = Of(size, spot).Carries;
        var (count, spacing) = HouseRules.OnBoard(spot.Behind) ? (holes.Count, Resistances.Spacing(holes)) : (0, 0);
        foreach (var k in known) if (k.Count == count && k.Spacing == spacing && k.Duration == duration) return k.Carries;
        var carries = Resistances.Of(size, spot, ask, duration, holes, plate, null);
        known.Add((count, spacing, duration, carries));
        return carries;
    }

    private Entry Of(FixingSize size, Spot spot)
    {
        if (!_spots.TryGetValue(spot, out var sizes)) _spots[spot] = sizes = new(ReferenceEqualityComparer.Instance);
        if (!sizes.TryGetValue(size, out var entry)) sizes[size] = entry = new();
        return entry;
    }
}
