using Pattress.Jobs;

namespace Pattress.Web.Desks;

/// <summary>A stretch of values over which the verdict stays the same.</summary>
public sealed record Turn(Verdict Verdict, double From, double To);

/// <summary>Asks the library for the plan at one value after another to show where the verdict turns.</summary>
internal static class Turns
{
    private const int Samples = 9, Halvings = 4;

    /// <summary>Stretches from low to high; gives the page a breath after each plan.</summary>
    public static async Task<IReadOnlyList<Turn>> Along(Job job, Fixture fixture, string field, double low, double high)
    {
        var alone = job with { Fixtures = [fixture] };
        var planner = new Replanner(PlanData.Embedded);
        Verdict At(double value) => planner.Plan(alone.With(fixture.Number(field, value))).Items[0].Verdict;
        var turns = new List<Turn>();
        double start = low, before = low;
        var verdict = At(low);
        for (int i = 1; i < Samples; i++)
        {
            await Task.Delay(1);
            double value = low + (high - low) * i / (Samples - 1);
            var here = At(value);
            if (here != verdict)
            {
                double turn = await Between(At, before, value, verdict);
                turns.Add(new(verdict, start, turn));
                (start, verdict) = (turn, here);
            }

            before = value;
        }

        return [.. turns, new(verdict, start, high)];
    }

    private static async Task<double> Between(Func<double, Verdict> at, double low, double high, Verdict first)
    {
        for (int i = 0; i < Halvings; i++)
        {
            await Task.Delay(1);
            double middle = (low + high) / 2;
            if (at(middle) == first) low = middle;
            else high = middle;
        }

        return low;
    }
}
