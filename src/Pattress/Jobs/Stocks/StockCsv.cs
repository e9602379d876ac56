using System.Globalization;
using System.Text;
using Pattress.Fixings;
using Pattress.Trials.Documents;

namespace Pattress.Jobs.Stocks;

/// <summary>
/// Stock and own prices as CSV, one row a fixing, bit or tool: <c>fixing,name,count,least,pack,pack_price,minutes</c>.
/// A row without a pack says what is in the van; one with a pack gives the price too. Empty fields are left as they are not known.
/// </summary>
public static class StockCsv
{
    /// <summary>First line of the list that ships with the program.</summary>
    public const string InventedMark = "# Invented: no shop has these prices and packs. Put your own in their place.";

    private const string Head = "fixing,name,count,least,pack,pack_price,minutes";
    private static readonly string[] Columns = Head.Split(',');

    /// <summary>The job's stock and prices.</summary>
    public static string Write(Job job)
    {
        var ids = job.Stock.Select(s => s.Fixing).Union(job.Prices.Select(p => p.Fixing), StringComparer.Ordinal).Order(StringComparer.Ordinal);
        return Lines(ids.Select(id => Row(id, job.Stock.FirstOrDefault(s => s.Fixing == id), job.Prices.FirstOrDefault(p => p.Fixing == id))));
    }

    /// <summary>Every size there is with its invented pack and price, to start a list of one's own from.</summary>
    public static string Invented(FixingCatalogue catalogue) => InventedMark + "\n"
        + Lines(catalogue.Sizes.Select(s => Row(s.Id, new(s.Id, 0), new(s.Id, "invented", s.Pack, s.PackPrice, s.Minutes))));

    /// <summary>The job with stock and prices of the file in place of its own, or every problem of the file.</summary>
    public static Outcome<Job> Read(string text, Job job)
    {
        var lines = new CsvLines(text).Read().Where(l => !l.Fields[0].StartsWith('#')).ToList();
        if (lines.Count == 0 || !lines[0].Fields.SequenceEqual(Columns)) return Outcome<Job>.Refused(new Problem("stock_head", "line 1", lines.Count == 0 ? "" : string.Join(',', lines[0].Fields), Head));
        var problems = new List<Problem>();
        var rows = lines.Skip(1).Select(l => RowOf(l, problems)).OfType<(StockItem? Stock, OwnPrice? Price)>().ToList();
        if (problems.Count > 0) return Outcome<Job>.Refused(problems);
        // The job's own door checks the rest: sizes that are not there, a fixing twice, packs and prices out of bounds.
        return JobReader.Read(JobWriter.Write(job with { Stock = [.. rows.Select(r => r.Stock).OfType<StockItem>()], Prices = [.. rows.Select(r => r.Price).OfType<OwnPrice>()] }));
    }

    private static (StockItem? Stock, OwnPrice? Price)? RowOf(CsvLine line, List<Problem> problems)
    {
        if (line.Broken || line.Fields.Count != Columns.Length)
        {
            problems.Add(new Problem("stock_row", $"line {line.Line}", string.Join(',', line.Fields), $"{Columns.Length} fields: {Head}"));
            return null;
        }

        decimal? Number(int i) => Field(line, i, problems);
        decimal? count = Number(2), least = Number(3), pack = Number(4), price = Number(5), minutes = Number(6);
        if (pack is null != price is null) problems.Add(new Problem("stock_pack_and_price", $"line {line.Line}", line.Fields[0], "both pack and pack_price, or neither"));
        string id = line.Fields[0];
        return (count is { } n ? new StockItem(id, (int)n, (int)(least ?? 0)) : null,
            pack is { } p && price is { } money ? new OwnPrice(id, line.Fields[1], (int)p, money, (double?)minutes) : null);
    }

    private static decimal? Field(CsvLine line, int i, List<Problem> problems)
    {
        string text = line.Fields[i];
        bool whole = i is 2 or 3 or 4;
        if (text.Length == 0) return null;
        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) && number is >= 0 and <= 1_000_000
            && (!whole || decimal.IsInteger(number))) return number;
        problems.Add(new Problem("stock_number", $"line {line.Line}, {Columns[i]}", text, whole ? "a whole number from 0 to 1000000" : "a number from 0 to 1000000, with a point"));
        return null;
    }

    private static string Lines(IEnumerable<string> rows) => string.Join('\n', rows.Prepend(Head)) + "\n";

    private static string Row(string id, StockItem? stock, OwnPrice? price) => string.Join(',', id, Quoted(price?.Name ?? ""), Text(stock?.Count), Text(stock?.Least is > 0 and var l ? l : null),
        Text(price?.Pack), Text(price?.PackPrice), Text(price?.Minutes));

    private static string Text(IFormattable? number) => number?.ToString(null, CultureInfo.InvariantCulture) ?? "";

    // What a spreadsheet would take for a formula is shown as the text that it is.
    private static string Quoted(string text) => text.Length == 0 ? "" : $"\"{(text[0] is '=' or '+' or '-' or '@' ? "'" : "")}{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
