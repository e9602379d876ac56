using System.Globalization;
using Pattress.Quantities;
using Pattress.Trials.Claims;

namespace Pattress.Trials.Documents;

/// <summary>
/// The columns that say how a test loaded its fixing: <c>test</c> (tension, shear or cantilever) and, for a cantilever, <c>arm_mm</c>,
/// <c>plate_width_mm</c>, <c>plate_height_mm</c> and <c>fixing_heights_mm</c> (heights above the toe, with blanks between). They are kept as further columns too.
/// </summary>
internal sealed class TestColumns
{
    private readonly int _test, _arm, _width, _height, _heights;

    private TestColumns(List<string> header) =>
        (_test, _arm, _width, _height, _heights) = (header.IndexOf("test"), header.IndexOf("arm_mm"), header.IndexOf("plate_width_mm"), header.IndexOf("plate_height_mm"), header.IndexOf("fixing_heights_mm"));

    public static TestColumns None { get; } = new([]);

    public static TestColumns Of(List<string> header) => new(header);

    /// <summary>One series holds one question: pulls (measured or by the bracket model), or shears, or an order of merit.</summary>
    public static bool Mixed(IReadOnlyList<TrialTest> tests)
    {
        bool shear = false, merit = false, pull = false;
        foreach (var t in tests)
        {
            shear |= t.In == TestedIn.Shear;
            merit |= t.In == TestedIn.OrderOfMerit;
            pull |= t.In is TestedIn.Tension or TestedIn.Cantilever;
        }
        return (shear ? 1 : 0) + (merit ? 1 : 0) + (pull ? 1 : 0) > 1;
    }

    /// <summary>The test with what these columns say of it; null and a fault where they cannot be read.</summary>
    public TrialTest? Applied(TrialTest test, List<string> fields, Action<string, string, string, string> fault)
    {
        string word = _test < 0 ? "" : fields[_test];
        switch (word)
        {
            case "": return test;
            case "tension": return test with { In = TestedIn.Tension };
            case "shear": return test with { In = TestedIn.Shear };
            case "cantilever": return Cantilevered(test, fields, fault);
            default:
                fault("trial_test_word", "test", word, "tension, shear or cantilever");
                return null;
        }
    }

    private TrialTest? Cantilevered(TrialTest test, List<string> fields, Action<string, string, string, string> fault)
    {
        if (Text(_arm, fields).Length == 0 || Text(_width, fields).Length == 0 || Text(_height, fields).Length == 0 || Text(_heights, fields).Length == 0)
            return test with { In = TestedIn.OrderOfMerit };
        var heights = Text(_heights, fields).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number).ToList();
        var pull = heights.Contains(null) || test.HighN is not null ? null
            : Cantilever.Pull(test.LoadN, Length(Text(_arm, fields)), new(Length(Text(_width, fields)) ?? 0, Length(Text(_height, fields)) ?? 0, [.. heights.Select(h => h!.Value)])).Value;
        if (pull is not null) return test with { In = TestedIn.Cantilever, Pull = pull, LoadN = pull.MiddleN };
        fault("trial_bad_bracket", "fixing_heights_mm", Text(_heights, fields), "a plate with a size, heights inside it, an arm above 0, and one load");
        return null;
    }

    private static string Text(int column, List<string> fields) => column < 0 ? "" : fields[column];

    private static double? Length(string text) => QuantityText.TryParseOrBare(text, Dimension.LengthMm, out double mm, out _) ? mm : null;

    private static double? Number(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double mm) ? mm : null;
}
