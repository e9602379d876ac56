using System.Globalization;
using Pattress.Actions;
using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>What the customer is told of a thing that hangs: what it may carry, what not to do, when to look again.</summary>
public static class AftercareRules
{
    private const double KgPerPound = 0.45359237;

    // In the order of the enum.
    private static readonly IReadOnlyList<CsvTable.Row> Looks = [.. CsvTable.FromEmbedded("data/planning/aftercare.csv").Rows];

    /// <summary>The aftercare of an item; null for what is not to hang here.</summary>
    /// <param name="settings">Units that the mass will be shown in: it is rounded down in them, so that no label promises more than was planned.</param>
    public static Aftercare? Of(Fixture fixture, ItemAnswer item, Settings settings)
    {
        if (item.Verdict == Verdict.NotHere || item.Brackets.Count == 0) return null;
        var row = Looks[(int)item.Class];
        bool person = item.Class == ConsequenceClass.HoldsPerson;
        double? carries = person ? null : RoundedDown(item.MassKg, settings);
        return new(carries, Months(row, "first_months"), Months(row, "every_months"), row["source"], [.. Donts(fixture, carries)]);
    }

    private static int Months(CsvTable.Row row, string column) => int.Parse(row[column], CultureInfo.InvariantCulture);

    private static double RoundedDown(double kg, Settings settings)
    {
        double unit = settings.Units == "imperial" ? KgPerPound : 1, value = kg / unit;
        double step = value < 1 ? 0.01 : value < 10 ? 0.1 : 1;
        return Math.Floor(value / step + 1e-6) * step * unit;
    }

    private static IEnumerable<Reason> Donts(Fixture fixture, double? carries)
    {
        if (carries is { } kg) yield return new("dont_overload", Said.Mass(kg));
        if (OwnDont(fixture.What) is { } code) yield return new(code);
        if (carries is null) yield return new("dont_use_loose");
        yield return new("dont_tighten");
    }

    private static string? OwnDont(string what) => what switch
    {
        "curtain_pole" or "curtain_track" or "roller_blind" or "roman_blind" or "venetian_blind" or "vertical_blind" or "pelmet" or "shutter" => "dont_swing",
        "shelf" or "floating_shelf" or "cabinet" or "coat_rack" or "screen" => "dont_climb",
        "radiator" or "towel_rail" => "dont_hold_on",
        "stair_gate" => "dont_climb_gate",
        _ => null,
    };
}
