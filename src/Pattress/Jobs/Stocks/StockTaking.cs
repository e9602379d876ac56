using System.Text;

namespace Pattress.Jobs.Stocks;

/// <summary>What is in the van before and after a job.</summary>
public static class StockTaking
{
    /// <summary>
    /// The van after the job was done as bought: packs, bits and tools are in it, what went into the wall is not. Spare fixings
    /// count as spoilt, what was carried for a wall that was not so is still there.
    /// </summary>
    public static IReadOnlyList<StockItem> After(Job job, PlanAnswer bought)
    {
        var used = bought.Items.Where(i => i.Verdict != Verdict.NotHere).SelectMany(i => i.Brackets).Where(b => b.Fixing is not null)
            .GroupBy(b => b.Fixing!, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Sum(b => b.Count), StringComparer.Ordinal);
        var after = job.Stock.ToDictionary(s => s.Fixing, StringComparer.Ordinal);
        foreach (var line in bought.Buy)
        {
            string id = line.Sort == "fixing" ? line.Id : Planning.Buying.CaseOfJob.StockId(line.Id);
            int gone = line.Sort == "fixing" && used.TryGetValue(id, out int n) ? Planning.Buying.BuyingChoice.WithSpare(n, job.Settings.Buying.SparePercent) : 0;
            var before = after.GetValueOrDefault(id) ?? new StockItem(id, 0);
            after[id] = before with { Count = Math.Max(0, before.Count + (line.Packs * line.PackSize) - gone) };
        }

        return [.. after.Values.OrderBy(s => s.Fixing, StringComparer.Ordinal)];
    }

    /// <summary>What is low, and by how much.</summary>
    public static IReadOnlyList<Reason> Low(IReadOnlyList<StockItem> stock) =>
        [.. stock.Where(s => s.Count < s.Least).Select(s => new Reason("stock_low", Said.Name(s.Fixing), Said.Count(s.Count), Said.Count(s.Least)))];
}

/// <summary>The van's stock as a document.</summary>
public static class StockJson
{
    public static string Write(IReadOnlyList<StockItem> stock, Settings settings, bool indented = true) => JsonOut.Text(json =>
    {
        var says = new Plans.PlanWords(settings);
        json.WriteStartObject();
        json.WriteObjects("stock", stock, (j, s) =>
        {
            j.WriteString("fixing", s.Fixing);
            j.WriteString("name", says.Name(s.Fixing));
            j.WriteNumber("count", s.Count);
            j.WriteNumber("least", s.Least);
        });
        json.WriteObjects("low", StockTaking.Low(stock), says.Write);
        json.WriteEndObject();
    }, indented);
}
