using Pattress.Brackets;

namespace Pattress.Trials.Claims;

/// <summary>The bracket of a cantilever test.</summary>
/// <param name="WidthMm">Width of the plate on the board.</param>
/// <param name="HeightMm">Height of the plate.</param>
/// <param name="FixingHeightsMm">Heights of the fixings above the toe, on the plate's middle line.</param>
public sealed record TestBracket(double WidthMm, double HeightMm, IReadOnlyList<double> FixingHeightsMm);

/// <summary>Pull on the most loaded fixing, between what a soft and a hard board give (N).</summary>
/// <param name="LowN">With the stiffness that gives the least.</param>
/// <param name="HighN">With the stiffness that gives the most.</param>
public sealed record ForceOnFixing(double LowN, double HighN)
{
    /// <summary>The middle on the scale of logarithms.</summary>
    public double MiddleN => Math.Sqrt(LowN * HighN);
}

/// <summary>Turns a weight on an arm into the pull on a fixing, by the contact of the plate with the board.</summary>
public static class Cantilever
{
    /// <summary>Range of the board's bed modulus and of the fixings' stiffness; nobody has published either, so both are assumed.</summary>
    private static readonly double[] Beds = [0.5, 2, 8, 30], Stiffnesses = [50, 500];

    /// <summary>
    /// The pull on the top fixing. Without arm or bracket a cantilever test is an order of merit and is refused
    /// (<c>cantilever_no_arm</c>, <c>cantilever_no_bracket</c>).
    /// </summary>
    /// <param name="weightN">The weight at failure (N), above 0.</param>
    /// <param name="armMm">Its distance from the board's face (mm), or null when not stated.</param>
    /// <param name="bracket">The bracket, or null when not stated.</param>
    public static Outcome<ForceOnFixing> Pull(double weightN, double? armMm, TestBracket? bracket)
    {
        if (!(weightN > 0 && double.IsFinite(weightN))) return Refused("out_of_range", "weight_n", "above 0");
        if (armMm is not { } arm) return Refused("cantilever_no_arm", "arm_mm", "the weight's distance from the board");
        if (!(arm > 0 && double.IsFinite(arm))) return Refused("out_of_range", "arm_mm", "above 0");
        if (bracket is null) return Refused("cantilever_no_bracket", "bracket", "size of the plate and heights of its fixings");
        if (!Sound(bracket)) return Refused("cantilever_bad_bracket", "bracket", "a plate with a size, fixings inside it");
        var pulls = Pulls(weightN * arm, bracket).ToList();
        return pulls.Contains(null)
            ? Refused("cantilever_not_solved", "bracket", "a bracket that its fixings can hold")
            : Outcome<ForceOnFixing>.Of(new(pulls.Min()!.Value, pulls.Max()!.Value));
    }

    private static bool Sound(TestBracket b) =>
        b.WidthMm is > 0 and < 1e4 && b.HeightMm is > 0 and < 1e4 && b.FixingHeightsMm.Count is > 0 and <= 20 && b.FixingHeightsMm.All(h => h > 0 && h < b.HeightMm);

    private static IEnumerable<double?> Pulls(double momentNmm, TestBracket bracket)
    {
        var plate = Plate.Rectangle(-bracket.WidthMm / 2, bracket.WidthMm / 2, 0, bracket.HeightMm);
        foreach (double bed in Beds)
            foreach (double stiffness in Stiffnesses)
                yield return Largest(plate, [.. bracket.FixingHeightsMm.Select(h => new FixingPoint(0, h, stiffness))], bed, momentNmm);
    }

    private static double? Largest(Plate plate, FixingPoint[] fixings, double bed, double momentNmm)
    {
        var tensions = new double[fixings.Length];
        var answer = ContactSolver.Solve(plate, fixings, new Bed(bed), new BracketLoad(0, 0, momentNmm), tensions);
        return answer.Status == ContactStatus.Balanced ? tensions.Max() : null;
    }

    private static Outcome<ForceOnFixing> Refused(string code, string path, string allowed) =>
        Outcome<ForceOnFixing>.Refused(new Problem(code, path, "", allowed));
}
