using System.Globalization;

namespace Pattress.Mutants;

/// <summary>What a campaign found, as Markdown.</summary>
internal static class Report
{
    internal static int Write(string folder, string title, TextWriter to)
    {
        var mutants = Campaign.Mutants(folder).ToDictionary(m => m.Id);
        var results = File.ReadLines(Path.Combine(folder, "results.tsv")).Select(l => l.Split('\t')).Select(p => (Mutant: mutants[int.Parse(p[0], CultureInfo.InvariantCulture)], Verdict: p[1])).ToList();
        var tried = results.Where(r => r.Mutant.Id != 0).ToList();
        var living = tried.Where(r => r.Verdict is "survives" or "reached by no test").OrderBy(r => r.Mutant.File, StringComparer.Ordinal).ThenBy(r => r.Mutant.Line).ToList();
        string planted = results.Where(r => r.Mutant.Id == 0).Select(r => r.Verdict).FirstOrDefault("not tried");
        double score = tried.Count == 0 ? 0 : 1 - (double)living.Count / tried.Count;
        to.WriteLine($"# {title}\n\n{File.ReadAllText(Path.Combine(folder, "about.txt"))}. Tried: {tried.Count}{(tried.Count < mutants.Count - 1 ? ", a seeded random sample" : ", all of them")}.");
        to.WriteLine(FormattableString.Invariant($"**Score {score * 100:F1} %** ({tried.Count - living.Count} died{Margin(score, tried.Count, mutants.Count - 1)}). The planted mutant: {planted}.\n"));
        to.WriteLine($"Tests used: {string.Join(", ", File.ReadAllLines(Path.Combine(folder, "spaces.txt")))}; of {Campaign.Tests(folder).Count} tests those under {Campaign.SlowestMs / 1000.0} s each.\n");
        to.WriteLine("| file | tried | died | score |\n|---|---|---|---|");
        foreach (var file in tried.GroupBy(r => Path.GetDirectoryName(r.Mutant.File)!).OrderBy(g => g.Key, StringComparer.Ordinal))
            to.WriteLine(FormattableString.Invariant($"| {file.Key} | {file.Count()} | {file.Count(r => !living.Contains(r))} | {100.0 * file.Count(r => !living.Contains(r)) / file.Count():F0} % |"));
        to.WriteLine("\n## Survivors\n\n| where | change | code | |\n|---|---|---|---|");
        foreach (var (m, verdict) in living) to.WriteLine($"| {m.File["src/Pattress/".Length..]}:{m.Line} | {m.Change} | `{m.Code.Replace("|", "\\|")}` | {(verdict == "survives" ? "" : "no test")} |");
        return planted is "survives" or "not tried" or "reached by no test" ? 1 : 0;
    }

    // 95 % of a sample without replacement.
    private static string Margin(double score, int tried, int all) => tried >= all || tried == 0 ? "" :
        FormattableString.Invariant($"; ± {196 * Math.Sqrt(score * (1 - score) / tried * (1 - (double)tried / all)):F1} points at 95 %");
}
