namespace Pattress.Trials.Standards;

/// <summary>A factor k for mean - k s, with where it comes from.</summary>
/// <param name="Value">The factor.</param>
/// <param name="Clause">Document, edition and clause.</param>
public sealed record KFactor(double Value, string Clause)
{
    internal static Outcome<KFactor> Of(double value, string clause) => Outcome<KFactor>.Of(new(value, clause));

    internal static Outcome<KFactor> NotCovered(int n, string clause, string allowed) =>
        Outcome<KFactor>.Refused(new Problem("not_covered", "n", n.ToString(System.Globalization.CultureInfo.InvariantCulture), $"{allowed} ({clause})"));
}

/// <summary>Whether the scatter is known from earlier work or taken from the tests at hand.</summary>
public enum Scatter
{
    Unknown,
    Known,
}

/// <summary>Whether a standard's printed table or the formula behind it is used: they differ in places.</summary>
public enum Basis
{
    Table,
    Formula,
}
