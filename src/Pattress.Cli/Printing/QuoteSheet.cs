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
        sheet.Heading(answer.Title.Length > 0 ? sheet.T("quote.for", Said.Words(answer.Title)) : sheet.T("quote"));
        var table = sheet.Table("what", ">number", ">minutes", ">amount");
        foreach (var line in quote.Lines) table.Row(say.Name(QuoteJson.NameOf(line)), Number(line.Count, "0"), line.Minutes > 0 ? Number(line.Minutes, "0.##") : "-", say.Money(line.Amount));
        table.Row(sheet.T("sum"), "", Number(quote.Minutes, "0.##"), say.Money(quote.Net));
        table.Row(sheet.T("tax"), "", "", say.Money(quote.Tax));
        if (quote.Rounding != 0) table.Row(sheet.T("rounding"), "", "", say.Money(quote.Rounding));
        table.Row(sheet.T("total"), "", "", say.Money(quote.Total));
        sheet.Write(table);
        List(sheet.T("rounding.how"), answer.Rules);
        List(sheet.T("not_included"), answer.NotIncluded);
        List(sheet.T("assumed"), answer.Assumed);
    }

    private void List(string heading, IReadOnlyList<Reason> reasons)
    {
        sheet.Heading(heading);
        foreach (var reason in reasons) sheet.Item("-", say.Sentence(reason));
    }

    private static string Number(double n, string format) => n.ToString(format, CultureInfo.InvariantCulture);
}
