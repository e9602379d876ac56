using Pattress.Jobs;
using Pattress.Papers.Documents;

namespace Pattress.Papers.Sheets;

/// <summary>All that papers are made from. They never calculate: each number comes from the plan or from the job.</summary>
/// <param name="Made">When they are made; the clock is the caller's.</param>
public sealed record PaperInput(Job Job, PlanAnswer Plan, DateTimeOffset Made, PaperSize Size);

/// <summary>The papers of a job, in the order of the way through it.</summary>
public static class PaperBook
{
    private static readonly (string Id, Func<Words, IReadOnlyList<Block>> Write)[] Papers =
    [
        ("job-sheet", JobSheet.Blocks),
        ("buying-list", BuyingSheet.Blocks),
        ("quote", QuotePaper.Blocks),
        ("template", TemplateSheet.Blocks),
        ("working", WorkingSheet.Blocks),
        ("proof-record", ProofSheet.Blocks),
        ("hand-over", HandOverPaper.Blocks),
        ("labels", LabelSheet.Blocks),
    ];

    /// <summary>Ids of the papers.</summary>
    public static IReadOnlyList<string> Ids { get; } = [.. Papers.Select(p => p.Id)];

    /// <summary>The title of a paper, in the job's English.</summary>
    public static string Title(string id, Settings settings) => new Words(new(new Job { Settings = settings }, Empty, default, PaperSize.A4)).T("title." + id);

    /// <summary>One paper.</summary>
    /// <exception cref="ArgumentException">There is no such paper.</exception>
    public static Paper Of(string id, PaperInput input)
    {
        var paper = Array.Find(Papers, p => p.Id == id);
        if (paper.Write is null) throw new ArgumentException($"no paper '{id}'", nameof(id));
        var words = new Words(input);
        return new(id, words.TitleOf(id), words.Language, input.Size, words.Foot, words.PageOf, paper.Write(words));
    }

    private static PlanAnswer Empty { get; } = new(Verdict.CheckFirst, "", "", "", [], [], [], [], 0, "GBP", [], [], []);
}
