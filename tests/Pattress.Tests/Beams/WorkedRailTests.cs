using System.Text.Json;
using Pattress.Actions.Beams;

namespace Pattress.Tests.Beams;

/// <summary>The worked rail (statics_cases.json), also moved along a longer rail's axis and mirrored.</summary>
public class WorkedRailTests
{
    private static readonly JsonElement Case = JsonDocument.Parse(File.ReadAllText("Published/statics_cases.json")).RootElement.GetProperty("beam");

    private static double[] Numbers(string name) => [.. Case.GetProperty(name).EnumerateArray().Select(v => v.GetDouble())];

    private static double Number(string name) => Case.GetProperty(name).GetDouble();

    private static Beam Rail(bool mirrored) => new(Number("L"), Number("EI"), [.. Numbers("supports")
        .Zip(Numbers("k"), (at, k) => new BeamSupport(mirrored ? Number("L") - at : at, k))]);

    private static readonly UniformLoad Own = new(0, Number("L"), Number("selfweight"));

    /// <summary>Eight digits are printed: half of the eighth.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Open_curtains_as_in_the_worked_case(bool mirrored)
    {
        var answer = BeamSolver.Solve(Rail(mirrored), new BeamLoads([Own, new(0, 400, 0.15), new(2600, 3000, 0.15)], []))!;
        foreach (var (expected, value) in Numbers("R_open").Zip(answer.Reactions)) Assert.Equal(expected, value, 0.6e-6);
    }

    /// <summary>
    /// The case was stepped at 5 mm: the exact maximum is not below it, and above it by no more than half a step of the curve:
    /// at the ends (positions 0 and 2600) it is the same to the printed digit.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Moving_stack_is_never_below_the_stepped_case(bool mirrored)
    {
        var envelope = BeamEnvelope.Of(Rail(mirrored), new BeamLoads([Own], []), new(new(400, 0.30)))!;
        double[] stepped = Numbers("R_env_max"), at = Numbers("at_a");
        Assert.True(envelope.Exact);
        for (int i = 0; i < stepped.Length; i++)
        {
            double start = envelope.Reactions[i].Max.At;
            Assert.InRange(envelope.Reactions[i].Max.Value, stepped[i] - 0.6e-5, stepped[i] + 2e-3);
            Assert.Equal(at[i], mirrored ? 2600 - start : start, 5.0);
        }
        Assert.Equal(stepped[0], envelope.Reactions[0].Max.Value, 0.6e-5);
        Assert.Equal(stepped[3], envelope.Reactions[3].Max.Value, 0.6e-5);
    }
}
