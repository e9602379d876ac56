using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Papers.Sheets;
using Pattress.Pdf;

namespace Pattress.Tests.Papers;

/// <summary>Papers of the demo house and of a job made by hand.</summary>
internal static class PaperSamples
{
    public static readonly DateTimeOffset Made = new(2026, 1, 2, 3, 4, 5, TimeSpan.Zero);

    public static Job DemoHouse { get; } = JobReader.Read(Embedded.Text("samples/demo-house.job.json")).Value!;

    public static Job Masonry { get; } = JobReader.Read(Embedded.Text("samples/masonry-house.job.json")).Value!;

    /// <summary>One pole on one wall, its numbers those of <see cref="SampleAnswer"/>.</summary>
    public static PaperInput ByHand(IReadOnlyList<BracketAnswer> brackets, Verdict verdict = Verdict.Ready) => new(
        new Job { Title = "By hand", Walls = [SampleAnswer.Wall], Fixtures = [SampleAnswer.Pole] },
        new PlanAnswer(verdict, "By hand", "0.0.0", "0123456789abcdef", [SampleAnswer.Item(verdict) with { Brackets = brackets }],
            [SampleAnswer.WallAnswer], [], [], 0, "GBP", [], [new("caution_cables")], []),
        Made, PaperSize.A4);

    public static PaperInput Input(Job job, PaperSize? size = null) => new(job, Planner.Plan(job, PlanData.Embedded), Made, size ?? PaperSize.For(job.Settings));

    public static byte[] Pdf(string id, PaperInput input) => PdfPapers.Write(PaperBook.Of(id, input), input.Made);

    public static Job Imperial(Job job) => job with { Settings = job.Settings with { Units = "imperial", English = "american" } };

    public static TheoryData<string> Ids => [.. PaperBook.Ids];
}
