using System.Globalization;
using Pattress.Jobs;
using Pattress.Jobs.Buying;

namespace Pattress.Cli.Printing;

/// <summary>A quote as people read it.</summary>
internal sealed class QuoteSheet(Sheet sheet, Say say)
{
    public void Write(QuoteAnswer answer)
    {
        var quote = answer.Quote;
        sheet.Heading(answer.Title.Length > 0 ? "Quote: " + answer.Title : "Quote");
        var table = Columns.Of("What", ">Number", ">Minutes", ">Amount");
        foreach (var line in quote.Lines) table.Row(say.Name(QuoteJson.NameOf(line)), Number(line.Count, "0"), line.Minutes > 0 ? Number(line.Minutes, "0.##") : "-", say.Money(line.Amount));
        table.Row("Sum", "", Number(quote.Minutes, "0.##"), say.Money(quote.Net));
        table.Row("Tax", "", "", say.Money(quote.Tax));
        if (quote.Rounding != 0) table.Row("Rounding", "", "", say.Money(quote.Rounding));
        table.Row("Total", "", "", say.Money(quote.Total));
        sheet.Write(table);
        List("How it is rounded", answer.Rules);
        List("Not included", answer.NotIncluded);
        List("Assumed", answer.Assumed);
    }

    private void List(string heading, IReadOnlyList<Reason> reasons)
    {
        sheet.Heading(heading);
        foreach (var reason in reasons) sheet.Item("-", say.Sentence(reason));
    }

    private static string Number(double n, string format) => n.ToString(format, CultureInfo.InvariantCulture);
}
