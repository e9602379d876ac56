using Pattress.Fixings;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Checks;

/// <summary>What was tested or proved is a size of the catalogue. A proof whose fixture has gone is kept.</summary>
internal static class TrialChecks
{
    public static void Run(Entry job, ProblemList problems)
    {
        foreach (var fixing in job.ItemsOf("trials").Concat(job.ItemsOf("proofs")).Select(t => t["fixing"]).OfType<Entry>())
            if (FixingCatalogue.FromEmbedded.Find(fixing.Text) is null)
                problems.Add("unknown_fixing", fixing.Path, fixing.Text, "kind and size of the catalogue, e.g. strap_toggle.medium");
    }
}
