using Pattress.Supports;

namespace Pattress.Jobs.Text;

/// <summary>What the holes of a job have taught of taps and magnets, as a reason.</summary>
internal static class RatesWords
{
    /// <summary>Null where no hole taught anything.</summary>
    public static Reason? Of(LineLearning learned)
    {
        if (learned.Holes == 0) return null;
        var (now, before) = (learned.Rates, learned.Assumed);
        return new("rates_learned", Said.Count(learned.Holes), Said.Count((int)LineLearning.PriorWeight),
            Said.Percent(now.TapSolidOn), Said.Percent(before.TapSolidOn), Said.Percent(now.TapSolidOff), Said.Percent(before.TapSolidOff),
            Said.Percent(now.MagnetFinds), Said.Percent(before.MagnetFinds), Said.Plain(now.MagnetFalsePerMm * 1000), Said.Plain(before.MagnetFalsePerMm * 1000));
    }
}
