namespace Pattress.Actions.Fixtures;

/// <summary>What kind of entry a field takes: lengths in mm, masses in kg, forces in N, a plain number, a whole count, or one of a list of words.</summary>
public enum FieldDimension { Length, Mass, Force, Number, Count, Words }

/// <summary>One entry that describes a fixture.</summary>
/// <param name="Name">Snake case with the unit at the end, e.g. <c>width_mm</c>; the text layer has its label as <c>field.width_mm</c>.</param>
/// <param name="Min">Least value allowed, in the field's unit; null for words.</param>
/// <param name="Max">Greatest value allowed; null for words.</param>
/// <param name="Default">Used when the entry is left out; null when it is required, or worked out from the others.</param>
/// <param name="DefaultWord">The same for words; empty when there is none.</param>
/// <param name="Words">The words allowed; empty for numbers.</param>
/// <param name="Source">Where the default comes from: a document and clause, <c>common practice, no source</c> or <c>assumed</c>.</param>
/// <param name="Measure">Reason code of the sentence that says what to measure.</param>
public sealed record FixtureField(
    string Name, FieldDimension Dimension, double? Min, double? Max, double? Default, string DefaultWord,
    bool Required, IReadOnlyList<string> Words, string Source, string Measure)
{
    /// <summary>Whether a number may stand here; a count must be whole.</summary>
    public bool Allows(double value) =>
        double.IsFinite(value) && Words.Count == 0 && !(value < Min) && !(value > Max)
        && (Dimension != FieldDimension.Count || Math.Floor(value) == value);

    /// <summary>Whether a word may stand here.</summary>
    public bool Allows(string word) => Words.Contains(word, StringComparer.Ordinal);
}
