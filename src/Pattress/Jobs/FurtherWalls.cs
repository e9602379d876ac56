namespace Pattress.Jobs;

/// <summary>Walls that are met and not judged by this program alone: each is "check first", with what to find out.</summary>
public static class FurtherWalls
{
    /// <summary>Ids that a wall's <c>built_as</c> may name besides <c>usual</c>.</summary>
    public static IReadOnlyList<string> Ids { get; } =
    [
        "no_fines", "cast_concrete", "clinker_block", "rubble", "honeycomb", "metal_lath", "resilient_bars", "gypsum_fibre", "wood_backed",
        "furred_ceiling", "sloping_ceiling",
    ];

    /// <summary>What to find out of a wall built so, or of a zone of coving; a sentence of the text layer.</summary>
    public static Reason FindOut(string id) => new("find_out." + id);
}
