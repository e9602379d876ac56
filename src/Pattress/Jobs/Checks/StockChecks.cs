using System.Globalization;
using Pattress.Fixings;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Checks;

/// <summary>What is in the van is a size of the catalogue, each on one line.</summary>
internal static class StockChecks
{
    public static void Run(Entry job, ProblemList problems)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var fixing in job.ItemsOf("stock").Select(s => s["fixing"]).OfType<Entry>())
        {
            if (!IsKnown(fixing.Text)) problems.Add("unknown_fixing", fixing.Path, fixing.Text, "kind and size of the catalogue, e.g. strap_toggle.medium");
            else if (!seen.Add(fixing.Text)) problems.Add("duplicate_stock", fixing.Path, fixing.Text, "each fixing on one line, with its count");
        }
    }

    /// <summary>Own prices are for sizes of the catalogue, each once; what is not wanted is a kind or size of it.</summary>
    public static void Prices(Entry job, ProblemList problems)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var fixing in job.ItemsOf("prices").Select(s => s["fixing"]).OfType<Entry>())
        {
            if (FixingCatalogue.FromEmbedded.Find(fixing.Text) is null) problems.Add("unknown_fixing", fixing.Path, fixing.Text, "kind and size of the catalogue, e.g. strap_toggle.medium");
            else if (!seen.Add(fixing.Text)) problems.Add("duplicate_price", fixing.Path, fixing.Text, "each fixing once");
        }

        foreach (var avoid in job["settings"]?["buying"]?.ItemsOf("avoid") ?? [])
            if (FixingCatalogue.FromEmbedded.Find(avoid.Text) is null && !FixingCatalogue.FromEmbedded.Kinds.Any(k => k.Id == avoid.Text))
                problems.Add("unknown_fixing", avoid.Path, avoid.Text, "kind of the catalogue, with or without its size, e.g. strap_toggle");
    }

    /// <summary>A size of the catalogue, a bit such as <c>bit.masonry.5.5</c>, or a setting tool.</summary>
    private static bool IsKnown(string id)
    {
        var catalogue = FixingCatalogue.FromEmbedded;
        if (catalogue.Find(id) is not null || (id.Contains("tool", StringComparison.Ordinal) && catalogue.ToolPrices.ContainsKey(id))) return true;
        return id.Split('.', 3) is ["bit", var kind, var mm] && catalogue.ToolPrices.ContainsKey(kind)
            && double.TryParse(mm, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double d) && d is > 0 and <= 200;
    }
}
