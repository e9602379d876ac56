using Pattress.Jobs;
using Pattress.Web.Browser;

namespace Pattress.Web.Desks;

/// <summary>Jobs as files.</summary>
internal static class Exports
{
    public static void Save(Job job) => Page.Save(FileName(job) + ".job.json", JobWriter.Write(job));

    /// <summary>Everything on this device in one file: one job a line, as <c>--batch</c> reads them.</summary>
    public static void SaveAll(IEnumerable<string> documents) =>
        Page.Save("pattress-everything.jobs.jsonl", string.Concat(documents.Select(d => d.Replace("\n", " ", StringComparison.Ordinal) + "\n")));

    private static string FileName(Job job) =>
        job.Title.Length == 0 ? "job" : new string([.. job.Title.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')]).Trim('-');
}
