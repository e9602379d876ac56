using System.Globalization;
using Pattress.Jobs;
using Pattress.Jobs.Buying;
using Pattress.Papers.Documents;

namespace Pattress.Papers.Sheets;

/// <summary>The quote for the customer, with what it does not include.</summary>
internal static class QuotePaper
{
    public static IReadOnlyList<Block> Blocks(Words words)
    {
        var answer = JobQuote.Of(words.Job, words.Plan, PlanData.Embedded);
        return
        [
            .. words.Head("quote"),
            Lines(answer, words),
            new Paragraph(words.T("quote_total", Said.Money(answer.Quote.Total)), Voice.Boxed),
            new Heading(words.T("quote_not_included")),
            new Listing(words.Sentences(answer.NotIncluded)),
            new Heading(words.T("quote_rules"), 3),
            new Listing(words.Sentences(answer.Rules.Concat(answer.Assumed))),
            new WriteOn(words.T("quote_by")), new WriteOn(words.T("quote_until")), new SignHere(words.T("quote_accepted"), []),
        ];
    }

    private static Table Lines(QuoteAnswer answer, Words words)
    {
        var quote = answer.Quote;
        return new(words.T("quote_lines"),
            [new(words.T("col.what"), 52), new(words.T("col.number_of"), 14, true), new(words.T("col.minutes"), 14, true), new(words.T("col.price"), 18, true)],
            [
                .. quote.Lines.Select(l => (IReadOnlyList<string>)[words.Name(QuoteJson.NameOf(l)), Words.Count(l.Count), l.Minutes > 0 ? l.Minutes.ToString("0.#", CultureInfo.InvariantCulture) : "", words.Money(l.Amount)]),
                [words.T("quote_net"), "", quote.Minutes.ToString("0.#", CultureInfo.InvariantCulture), words.Money(quote.Net)],
                [words.T("quote_tax"), "", "", words.Money(quote.Tax)],
                [words.T("quote_rounding"), "", "", words.Money(quote.Rounding)],
            ]);
    }
}
