using Pattress.Actions;

namespace Pattress.Planning;

/// <summary>What a class of consequence asks for, from <c>data/planning/classes.csv</c>.</summary>
/// <param name="Probability">Greatest probability of failure over the reference period.</param>
/// <param name="Sure">How sure the wall or the support must be before the verdict is ready.</param>
public sealed record ClassTarget(double Probability, double Sure, string Source)
{
    private static readonly IReadOnlyList<ClassTarget> All =
        [.. CsvTable.FromEmbedded("data/planning/classes.csv").Rows.Select(r => new ClassTarget(r.Number("target_pf"), r.Number("sure"), r["source"]))];

    /// <summary>The target of a class; the file's rows stand in the order of the enum.</summary>
    public static ClassTarget Of(ConsequenceClass c) => All[(int)c];
}
