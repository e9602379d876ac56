using Pattress.Jobs;
using Pattress.Planning.Money;

namespace Pattress.Tests.Planning.Money;

/// <summary>A quote worked by hand. All prices are invented; the arithmetic stands beside each line.</summary>
public class WorkedQuoteTests
{
    private static readonly QuoteCase Work = new(
        [new("set_up", 2, 10), new("mark", 7, 3), new("drill_and_set", 14, 2.25), new("hang", 3, 12), new("travel", 2, 30), new("stairs", 4, 4), new("clean", 0, 6)],
        [new("strap_toggle.medium", 5, 10, 10.99m), new("wood_screw.long", 7, 100, 13.50m), new("hammer_in.medium", 0, 50, 3m)],
        new QuoteTerms { MarkUpPercent = 15, TaxPercent = 20, Visits = 2, ParkingPrice = 4.35m, RoundTo = 0.05m }, 0.55m);

    [Fact]
    public void The_worked_quote_agrees_to_the_penny()
    {
        var quote = Quoting.Of(Work);
        Assert.Equal(
        [
            11.00m, // set_up: 2 x 10 = 20 min x 0.55
            11.55m, // mark: 7 x 3 = 21 min x 0.55
            17.33m, // drill_and_set: 14 x 2.25 = 31.5 min x 0.55 = 17.325, half up
            19.80m, // hang: 36 min x 0.55
            33.00m, // travel: 60 min x 0.55
            8.80m, //  stairs: 16 min x 0.55
            8.70m, //  parking: 2 x 4.35
            5.50m, //  5 of 10 at 10.99 = 5.495, half up
            0.95m, //  7 of 100 at 13.50 = 0.945, half up
            0.97m, //  15 % of 6.45 = 0.9675
        ], quote.Lines.Select(l => l.Amount));
        Assert.Equal(117.60m, quote.Net); //    11.00 + 11.55 + 17.33 + 19.80 + 33.00 + 8.80 + 8.70 + 5.50 + 0.95 + 0.97
        Assert.Equal(23.52m, quote.Tax); //     20 % of 117.60
        Assert.Equal(141.10m, quote.Total); //  141.12 to the nearest 0.05
        Assert.Equal(-0.02m, quote.Rounding);
        Assert.Equal(184.5, quote.Minutes, 9); // 20 + 21 + 31.5 + 36 + 60 + 16
    }

    [Fact]
    public void What_is_not_done_has_no_line() => Assert.DoesNotContain(Quoting.Of(Work).Lines, l => l.Name is "clean" or "hammer_in.medium");

    [Fact]
    public void A_tenth_of_a_pound_ten_times_is_a_pound() =>
        // In binary floating point 0.1 ten times is 0.9999999999999999.
        Assert.Equal(1.00m, Quoting.Of(new([.. Enumerable.Range(0, 10).Select(_ => new QuoteStep("mark", 1, 0.1))], [], new QuoteTerms { MarkUpPercent = 0 }, 1m)).Total);

    [Fact]
    public void Actual_times_better_the_minutes()
    {
        // mark: assumed 3 min worth 12; seen 12 that took 60 min: (12 x 3 + 60) / (12 + 12) = 4.
        Assert.Equal(4, WorkMinutes.Of("mark", [new Actual("a", "mark", 5, 20), new Actual("b", "mark", 7, 40), new Actual("c", "hang", 1, 99)]), 12);
        Assert.Equal(3, WorkMinutes.Of("mark", []), 12);
        // drill_and_set has its start from the sizes: (30 x 2.5 + 45) / (30 + 10) = 3.
        Assert.Equal(3, WorkMinutes.Of("drill_and_set", [new Actual("a", "drill_and_set", 10, 45)], 2.5), 12);
    }

    [Fact]
    public void Many_actual_times_outweigh_what_was_assumed() =>
        Assert.InRange(WorkMinutes.Of("mark", [new Actual("a", "mark", 12_000, 60_000)]), 4.99, 5);
}
