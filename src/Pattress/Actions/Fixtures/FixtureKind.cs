namespace Pattress.Actions.Fixtures;

/// <summary>A kind of thing to hang.</summary>
/// <param name="Id">Fixed id, e.g. <c>curtain_pole</c>; the text layer has its name as <c>fixture.curtain_pole</c>.</param>
/// <param name="Class">What happens when it comes down; over a bed or from a ceiling it is higher.</param>
/// <param name="MinBrackets">Fewest brackets that the user may place; placing none leaves it to the fixture.</param>
/// <param name="MaxBrackets">Most brackets.</param>
/// <param name="OnWall">Can hang on a wall.</param>
/// <param name="OnCeiling">Can hang from a ceiling.</param>
/// <param name="Plate">Bracket assumed when none was measured: a row of <c>data/fixtures/plates.csv</c>.</param>
/// <param name="Trade">Who to call when it is not for a fitter, e.g. <c>plumber</c>; empty otherwise.</param>
/// <param name="Fields">Entries in the order of the form.</param>
public sealed record FixtureKind(
    string Id, ConsequenceClass Class, int MinBrackets, int MaxBrackets, bool OnWall, bool OnCeiling,
    string Plate, string Trade, string Source, IReadOnlyList<FixtureField> Fields)
{
    /// <summary>Belongs to a licensed trade: the plan refuses it and says whom to call.</summary>
    public bool LicensedTrade => Trade.Length > 0;

    /// <summary>The reason why a licensed trade is needed, or null.</summary>
    public Reason? Refusal =>
        LicensedTrade ? new Reason("licensed_trade", Said.Name("fixture." + Id), Said.Name("trade." + Trade)) : null;

    /// <summary>The field of that name, or null.</summary>
    public FixtureField? Field(string name) => Fields.FirstOrDefault(f => f.Name == name);
}
