using System.Globalization;
using Pattress.Jobs;
using Pattress.Working;

namespace Pattress.Actions.Fixtures;

/// <summary>Reads what was entered for a fixture; whatever was left out is taken from the catalogue and noted as assumed.</summary>
internal sealed class Entries(FixtureKind kind, Fixture fixture, Trace? trace)
{
    private readonly Dictionary<string, Assumption> _assumed = new(StringComparer.Ordinal);

    /// <summary>Every default and table value used so far, in the order of use.</summary>
    public IReadOnlyList<Assumption> Assumed => [.. _assumed.Values];

    /// <summary>A number that was entered or has a default.</summary>
    public double Number(string name) => Entered(name) ?? Default(kind.Field(name)!);

    /// <summary>A number that was entered, else null: the caller works it out.</summary>
    public double? Entered(string name) => fixture.Numbers.TryGetValue(name, out double v) ? v : null;

    /// <summary>A whole number.</summary>
    public int Count(string name) => (int)Math.Round(Number(name));

    /// <summary>A word that was entered, else the default.</summary>
    public string Word(string name)
    {
        if (fixture.Words.TryGetValue(name, out string? word)) return word;
        var field = kind.Field(name)!;
        Note(name, new("assumed_entry", [Said.Name("field." + name), Said.Name("word." + field.DefaultWord)], field.Source));
        return field.DefaultWord;
    }

    /// <summary>A value of the table of weights, noted as assumed when it was not entered.</summary>
    public double Table(string id)
    {
        var row = Weights.Of(id);
        Note(id, new("assumed_table", [Said.Name("weight." + id), Said.Plain(row.Value), Said.Words(row.Unit)], row.Source));
        string printed = row.Value.ToString("R", CultureInfo.InvariantCulture);
        return trace.Step(id.Replace('.', '_'), row.Value, row.Unit, row.Source, [], printed);
    }

    /// <summary>A rail of the table of rails.</summary>
    public RailRow Rail(string id)
    {
        var row = Weights.Rail(id);
        Note(id, new("assumed_table", [Said.Name("rail." + id), Said.Plain(row.MassKgM), Said.Words("kg/m")], row.Source));
        return row;
    }

    /// <summary>Notes an assumption once.</summary>
    public void Note(string key, Assumption assumption) => _assumed.TryAdd(key, assumption);

    private double Default(FixtureField field)
    {
        double value = field.Default ?? field.Min ?? 0;
        Note(field.Name, new("assumed_entry", [Said.Name("field." + field.Name), Shown(field.Dimension, value)], field.Source));
        return value;
    }

    private static Said Shown(FieldDimension dimension, double value) => dimension switch
    {
        FieldDimension.Length => Said.Length(value),
        FieldDimension.Mass => Said.Mass(value),
        FieldDimension.Force => Said.Force(value),
        FieldDimension.Count => Said.Count((int)value),
        _ => Said.Plain(value),
    };
}
