using System.Text.Json;
using Pattress.Jobs.Plans;
using Pattress.Planning.Money;

namespace Pattress.Jobs.Buying;

/// <summary>A quote for a job, with what it does not include.</summary>
public sealed record QuoteAnswer(Quote Quote, string Title, string Currency, IReadOnlyList<Reason> Rules, IReadOnlyList<Reason> NotIncluded, IReadOnlyList<Reason> Assumed);

/// <summary>Prices a job as bought.</summary>
public static class JobQuote
{
    public static QuoteAnswer Of(Job job, PlanAnswer plan, PlanData data)
    {
        var work = QuoteOfPlan.Case(job, plan, data.Catalogue.With(job.Prices));
        return new(Quoting.Of(work), job.Title, job.Settings.Currency, Rules(job.Settings.Quote), NotIncluded(plan), Assumed(job));
    }

    private static IReadOnlyList<Reason> Rules(QuoteTerms terms) =>
        [new("quote_rule_lines"), terms.TaxPercent > 0 ? new("quote_rule_tax", Said.Plain((double)terms.TaxPercent)) : new("quote_rule_no_tax"), new("quote_rule_total", Said.Money(terms.RoundTo))];

    private static IReadOnlyList<Reason> NotIncluded(PlanAnswer plan)
    {
        var said = new List<Reason> { new("quote_not_decorating"), new("quote_not_trades"), new("quote_not_hidden"), new("quote_not_things"), new("quote_not_tools") };
        var left = plan.Items.Where(i => i.Verdict == Verdict.NotHere).Select(i => i.Name.Length > 0 ? i.Name : i.Id).ToList();
        if (left.Count > 0) said.Insert(0, new("quote_not_here", Said.Words(string.Join(", ", left))));
        if (plan.Items.Any(i => i.Verdict == Verdict.CheckFirst)) said.Insert(0, new("quote_not_checked"));
        return said;
    }

    private static IReadOnlyList<Reason> Assumed(Job job) =>
        [job.Actuals.Count == 0 ? new("quote_minutes_assumed") : new("quote_minutes_learnt", Said.Count(job.Actuals.Count)), job.Prices.Count == 0 ? new("assume_prices") : new("assume_other_prices", Said.Count(job.Prices.Count))];
}

/// <summary>A quote as a document.</summary>
public static class QuoteJson
{
    public static string Write(QuoteAnswer answer, Settings settings, bool indented = true) => JsonOut.Text(json =>
    {
        var (says, quote) = (new PlanWords(settings), answer.Quote);
        json.WriteStartObject();
        json.WriteString("title", answer.Title);
        json.WriteObjects("lines", quote.Lines, (j, line) => WriteLine(j, line, says));
        json.WriteNumber("minutes", quote.Minutes);
        json.WriteNumber("net", quote.Net);
        json.WriteNumber("tax", quote.Tax);
        json.WriteNumber("rounding", quote.Rounding);
        json.WriteNumber("total", quote.Total);
        json.WriteString("currency", answer.Currency);
        json.WriteObjects("rules", answer.Rules, says.Write);
        json.WriteObjects("not_included", answer.NotIncluded, says.Write);
        json.WriteObjects("assumptions", answer.Assumed, says.Write);
        json.WriteEndObject();
    }, indented);

    private static void WriteLine(Utf8JsonWriter json, QuoteLine line, PlanWords says)
    {
        json.WriteString("sort", line.Sort);
        json.WriteString("id", line.Name);
        json.WriteString("name", says.Name(NameOf(line)));
        json.WriteNumber("count", line.Count);
        json.WriteNumber("minutes", line.Minutes);
        json.WriteNumber("amount", line.Amount);
    }

    /// <summary>Id of the words for a line: a size, a check or a step of the work.</summary>
    public static string NameOf(QuoteLine line) => line.Sort == "material" || line.Name.StartsWith("check.", StringComparison.Ordinal) ? line.Name : "work." + line.Name;
}
