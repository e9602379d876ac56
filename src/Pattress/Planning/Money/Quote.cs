using Pattress.Jobs;

namespace Pattress.Planning.Money;

/// <summary>So many of a step of the work, and the minutes one takes.</summary>
public sealed record QuoteStep(string Step, int Count, double Minutes);

/// <summary>Fixings that stay in the wall, with the pack they come from.</summary>
public sealed record QuoteMaterial(string Fixing, int Count, int Pack, decimal PackPrice);

/// <summary>What is to be priced.</summary>
public sealed record QuoteCase(IReadOnlyList<QuoteStep> Steps, IReadOnlyList<QuoteMaterial> Materials, QuoteTerms Terms, decimal MinutePrice);

/// <summary>A line of a quote. Sort is <c>labour</c>, <c>travel</c>, <c>stairs</c>, <c>parking</c>, <c>material</c> or <c>mark_up</c>.</summary>
/// <param name="Name">Step or size.</param>
/// <param name="Minutes">Of all of them; 0 for what takes none.</param>
public sealed record QuoteLine(string Sort, string Name, int Count, double Minutes, decimal Amount);

/// <summary>A priced quote.</summary>
/// <param name="Net">Sum of the lines.</param>
/// <param name="Rounding">What the last rounding adds or takes.</param>
public sealed record Quote(IReadOnlyList<QuoteLine> Lines, decimal Net, decimal Tax, decimal Rounding, decimal Total, double Minutes);

/// <summary>
/// Prices work. Decimal throughout. Each line is rounded to the penny, half away from zero; tax is taken once, on the sum;
/// the total is rounded last, to what the terms say.
/// </summary>
public static class Quoting
{
    private static readonly string[] Apart = ["travel", "stairs"];

    public static Quote Of(QuoteCase work)
    {
        var lines = work.Steps.Where(s => s.Count > 0).Select(s => Step(s, work.MinutePrice)).ToList();
        if (work.Terms.ParkingPrice > 0) lines.Add(new("parking", "parking", work.Terms.Visits, 0, Penny(work.Terms.Visits * work.Terms.ParkingPrice)));
        var materials = work.Materials.Where(m => m.Count > 0).Select(m => new QuoteLine("material", m.Fixing, m.Count, 0, Penny(m.Count * m.PackPrice / m.Pack))).ToList();
        lines.AddRange(materials);
        decimal markUp = Penny(materials.Sum(m => m.Amount) * work.Terms.MarkUpPercent / 100);
        if (markUp > 0) lines.Add(new("mark_up", "mark_up", 1, 0, markUp));
        decimal net = lines.Sum(l => l.Amount), tax = Penny(net * work.Terms.TaxPercent / 100), total = To(net + tax, work.Terms.RoundTo);
        return new(lines, net, tax, total - net - tax, total, lines.Sum(l => l.Minutes));
    }

    private static QuoteLine Step(QuoteStep s, decimal minutePrice)
    {
        decimal minutes = decimal.Round((decimal)s.Minutes * s.Count, 2, MidpointRounding.AwayFromZero);
        return new(Apart.Contains(s.Step) ? s.Step : "labour", s.Step, s.Count, (double)minutes, Penny(minutes * minutePrice));
    }

    private static decimal Penny(decimal amount) => decimal.Round(amount, 2, MidpointRounding.AwayFromZero);

    private static decimal To(decimal amount, decimal step) => decimal.Round(amount / step, 0, MidpointRounding.AwayFromZero) * step;
}
