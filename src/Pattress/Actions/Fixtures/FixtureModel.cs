namespace Pattress.Actions.Fixtures;

/// <summary>One kind of fixture: from what was entered to loads on its brackets.</summary>
internal abstract class FixtureModel
{
    /// <summary>The kind's id in the catalogue.</summary>
    public abstract string Kind { get; }

    /// <summary>Works out mass, brackets and cases; never throws on a fixture that passed the door.</summary>
    public abstract Hung Hang(Site site);
}
