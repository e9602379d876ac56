using System.Globalization;
using System.Text;
using Pattress.Fixings;
using Pattress.Trials.Documents;

namespace Pattress.Jobs.Stocks;

/// <summary>
/// Stock and own prices as CSV, one row a fixing, bit or tool: <c>fixing,name,count,least,pack,pack_price,minutes</c>.
/// A row without a pack says what is in the van; one with a pack gives the price too. Empty fields are left as they are not known. Where the user's own
/// measures or the claims of his packets are known, eleven more columns follow: <c>hole_mm,length_mm,grip_min_mm,grip_max_mm,void_mm,embed_mm,claim_n,claim_load,claim_basis,claim_factor,claim_board_mm</c>.
/// </summary>
public static class StockCsv
{
    /// <summary>First line of the list that ships with the program.</summary>
    public const string InventedMark = "# Invented: no shop has these prices and packs. Put your own in their place.";

    private const string Head = "fixing,name,count,least,pack,pack_price,minutes";
    private const string More = ",hole_mm,length_mm,grip_min_mm,grip_max_mm,void_mm,embed_mm,claim_n,claim_load,claim_basis,claim_factor,claim_board_mm";
    private static readonly string[] Columns = Head.Split(','), AllColumns = (Head + More).Split(',');
    private static readonly string[] Loads = ["tension", "shear", "not_said"], Bases = ["ultimate", "mean", "characteristic", "recommended", "not_said"];

    /// <summary>The job's stock and prices.</summary>
    public static string Write(Job job)
    {
        var ids = job.Stock.Select(s => s.Fixing).Union(job.Prices.Select(p => p.Fixing), StringComparer.Ordinal).Order(StringComparer.Ordinal);
        bool more = job.Prices.Any(p => p.Size is not null || p.Claim is not null);
        return Lines(more, ids.Select(id => Row(id, job.Stock.FirstOrDefault(s => s.Fixing == id), job.Prices.FirstOrDefault(p => p.Fixing == id), more)));
    }

    /// <summary>Every size there is with its invented pack and price, to start a list of one's own from.</summary>
    public static string Invented(FixingCatalogue catalogue) => InventedMark + "\n"
        + Lines(false, catalogue.Sizes.Select(s => Row(s.Id, new(s.Id, 0), new(s.Id, "invented", s.Pack, s.PackPrice, s.Minutes))));

    /// <summary>The job with stock and prices of the file in place of its own, or every problem of the file.</summary>
    public static Outcome<Job> Read(string text, Job job)
    {
        var lines = new CsvLines(text).Read().Where(l => !l.Fields[0].StartsWith('#')).ToList();
        if (lines.Count == 0 || !lines[0].Fields.SequenceEqual(Columns) && !lines[0].Fields.SequenceEqual(AllColumns)) return Outcome<Job>.Refused(new Problem("stock_head", "line 1", lines.Count == 0 ? "" : string.Join(',', lines[0].Fields), Head));
        var problems = new List<Problem>();
        var rows = lines.Skip(1).Select(l => RowOf(l, lines[0].Fields.Count, problems)).OfType<(StockItem? Stock, OwnPrice? Price)>().ToList();
        if (problems.Count > 0) return Outcome<Job>.Refused(problems);
        // The job's own door checks the rest: sizes that are not there, a fixing twice, packs and prices out of bounds.
        return JobReader.Read(JobWriter.Write(job with { Stock = [.. rows.Select(r => r.Stock).OfType<StockItem>()], Prices = [.. rows.Select(r => r.Price).OfType<OwnPrice>()] }));
    }

    private static (StockItem? Stock, OwnPrice? Price)? RowOf(CsvLine line, int fields, List<Problem> problems)
    {
        if (line.Broken || line.Fields.Count != fields)
        {
            problems.Add(new Problem("stock_row", $"line {line.Line}", string.Join(',', line.Fields), $"{fields} fields, as in the first line"));
            return null;
        }

        decimal? Number(int i) => Field(line, i, problems);
        decimal? count = Number(2), least = Number(3), pack = Number(4), price = Number(5), minutes = Number(6);
        if (pack is null != price is null) problems.Add(new Problem("stock_pack_and_price", $"line {line.Line}", line.Fields[0], "both pack and pack_price, or neither"));
        string id = line.Fields[0];
        return (count is { } n ? new StockItem(id, (int)n, (int)(least ?? 0)) : null,
            pack is { } p && price is { } money ? new OwnPrice(id, line.Fields[1], (int)p, money, (double?)minutes) { Size = SizeOf(line, problems), Claim = ClaimOf(line, problems) } : null);
    }

    private static OwnSize? SizeOf(CsvLine line, List<Problem> problems)
    {
        if (line.Fields.Count <= Columns.Length) return null;
        double? At(int i) => (double?)Field(line, i, problems);
        var size = new OwnSize(At(7), At(8), At(9), At(10), At(11), At(12));
        return size.IsNothing ? null : size;
    }

    private static OwnClaim? ClaimOf(CsvLine line, List<Problem> problems)
    {
        if (line.Fields.Count <= Columns.Length || Field(line, 13, problems) is not { } load) return null;
        return new((double)load, Word(line, 14, Loads, problems), Word(line, 15, Bases, problems), (double?)Field(line, 16, problems), (double?)Field(line, 17, problems));
    }

    private static string Word(CsvLine line, int i, string[] words, List<Problem> problems)
    {
        string text = line.Fields[i];
        if (text.Length > 0 && !words.Contains(text)) problems.Add(new Problem("stock_word", $"line {line.Line}, {AllColumns[i]}", text, string.Join(", ", words)));
        return text.Length > 0 ? text : "not_said";
    }

    private static decimal? Field(CsvLine line, int i, List<Problem> problems)
    {
        string text = line.Fields[i];
        bool whole = i is 2 or 3 or 4;
        if (text.Length == 0) return null;
        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) && number is >= 0 and <= 1_000_000
            && (!whole || decimal.IsInteger(number))) return number;
        problems.Add(new Problem("stock_number", $"line {line.Line}, {AllColumns[i]}", text, whole ? "a whole number from 0 to 1000000" : "a number from 0 to 1000000, with a point"));
        return null;
    }

    private static string Lines(bool more, IEnumerable<string> rows) => string.Join('\n', rows.Prepend(more ? Head + More : Head)) + "\n";

    private static string Row(string id, StockItem? stock, OwnPrice? price, bool more = false) => string.Join(',', id, Quoted(price?.Name ?? ""), Text(stock?.Count), Text(stock?.Least is > 0 and var l ? l : null),
        Text(price?.Pack), Text(price?.PackPrice), Text(price?.Minutes)) + (more ? "," + Rest(price?.Size, price?.Claim) : "");

    private static string Rest(OwnSize? s, OwnClaim? c) => string.Join(',', Text(s?.HoleMm), Text(s?.LengthMm), Text(s?.GripMinMm), Text(s?.GripMaxMm), Text(s?.VoidMm), Text(s?.EmbedMm),
        Text(c?.LoadN), c?.Load ?? "", c?.Basis ?? "", Text(c?.Factor), Text(c?.BoardMm));

    private static string Text(IFormattable? number) => number?.ToString(null, CultureInfo.InvariantCulture) ?? "";

    // What a spreadsheet would take for a formula is shown as the text that it is.
    private static string Quoted(string text) => text.Length == 0 ? "" : $"\"{(text[0] is '=' or '+' or '-' or '@' ? "'" : "")}{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
