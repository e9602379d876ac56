namespace Pattress.Tests.Published;

/// <summary>One value as it was published (or another program gave it) and as we give it.</summary>
internal sealed record Deviation(string Source, string Id, double Expected, double Value)
{
    internal double Share => Expected == 0 ? 0 : Math.Abs(Value / Expected - 1);
}

/// <summary>Collects what tests compare, for the page of validation; while nobody collects, nothing is kept.</summary>
internal static class Deviations
{
    [ThreadStatic]
    private static List<Deviation>? _noted;

    internal static void Note(string source, string id, double expected, double value) => _noted?.Add(new(source, id, expected, value));

    /// <summary>What the tests run by an action compared.</summary>
    internal static IReadOnlyList<Deviation> Of(Action tests)
    {
        _noted = [];
        try
        {
            tests();
            return _noted;
        }
        finally { _noted = null; }
    }
}
