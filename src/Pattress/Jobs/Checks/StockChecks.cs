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
            if (FixingCatalogue.FromEmbedded.Find(fixing.Text) is null) problems.Add("unknown_fixing", fixing.Path, fixing.Text, "kind and size of the catalogue, e.g. strap_toggle.medium");
            else if (!seen.Add(fixing.Text)) problems.Add("duplicate_stock", fixing.Path, fixing.Text, "each fixing on one line, with its count");
        }
    }
}
