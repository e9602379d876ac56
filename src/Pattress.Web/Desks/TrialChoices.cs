using Pattress.Fixings;

namespace Pattress.Web.Desks;

/// <summary>What can be chosen when a test is entered.</summary>
internal static class TrialChoices
{
    /// <summary>Sizes of the catalogue, board fixings first, as it has them.</summary>
    public static IReadOnlyList<string> Sizes { get; } = [.. FixingCatalogue.FromEmbedded.Sizes.Select(s => s.Id)];

    public static IReadOnlyList<string> Loads { get; } = ["tension", "shear"];

    public static IReadOnlyList<string> Outcomes { get; } = ["failed", "stopped"];

    public static IReadOnlyList<string> Intos { get; } = ["board", "brick", "dense_block", "aerated_block", "concrete", "dab", "unknown"];

    public static IReadOnlyList<string> Moistures { get; } = ["dry", "damp", "fresh_plaster", "unknown"];

    public static IReadOnlyList<string> Wheres { get; } = ["bench", "site"];

    public static IReadOnlyList<string> Modes { get; } = ["unknown", "board", "slid", "fixing", "screw"];
}
