using System.Text.RegularExpressions;
using Pattress.Jobs;
using Pattress.Jobs.Buying;
using Pattress.Jobs.Site;
using Pattress.Jobs.Text;
using Pattress.Papers.Documents;
using Pattress.Papers.Sheets;
using Pattress.Tests.Rules;

namespace Pattress.Tests.Papers;

/// <summary>What the papers say: all that the plan says, in the job's units, and nothing that it does not.</summary>
public partial class PaperTextTests
{
    private static string Text(string id, PaperInput input)
    {
        using var file = new PdfFile(PaperSamples.Pdf(id, input));
        return Spaces().Replace(file.Text, " ");
    }

    [Fact]
    public void Every_code_of_the_papers_has_a_text()
    {
        var codes = SourceTree.Files("src/Pattress.Papers", ".cs").SelectMany(f => Code().Matches(SourceTree.Text(f))).Select(m => "paper." + m.Groups[1].Value).Distinct().ToList();
        Assert.True(codes.Count > 60, "the scan found hardly any code");
        Assert.Equal([], codes.Where(c => !c.EndsWith('.') && !Texts.Has(c)));
    }

    /// <summary>The embedded font has no Greek: its letters are named, none is lost.</summary>
    [Fact]
    public void No_sign_of_the_working_is_lost()
    {
        string text = Text("working", PaperSamples.Input(PaperSamples.DemoHouse));
        Assert.DoesNotContain('?', text);
        Assert.Contains("rho", text, StringComparison.Ordinal);
        Assert.Contains("gamma", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_job_sheet_has_every_hole_caution_and_check_of_the_plan()
    {
        var input = PaperSamples.Input(PaperSamples.DemoHouse);
        string text = Text("job-sheet", input);
        foreach (var caution in input.Plan.Cautions) Says(text, Texts.Sentence(caution, input.Job.Settings));
        foreach (var check in input.Plan.Checks) Says(text, Texts.Sentence(check.Why, input.Job.Settings)[1..]);
        foreach (var item in input.Plan.Items)
        {
            Says(text, item.Name);
            if (item.Verdict == Verdict.NotHere) continue;
            foreach (var hole in item.Brackets.SelectMany(b => b.Holes))
                Says(text, Shows.Length(hole.At.X, input.Job.Settings) + " " + Shows.Length(hole.At.Y, input.Job.Settings));
        }
    }

    [Fact]
    public void What_is_not_to_be_drilled_has_no_holes_on_any_paper()
    {
        var input = PaperSamples.ByHand([SampleAnswer.Bracket(0, new(625, 2100), "strap_toggle.medium")], Verdict.NotHere);
        Assert.Contains("Not here: do not drill", Text("job-sheet", input), StringComparison.Ordinal);
        Assert.DoesNotContain("9 mm", Text("job-sheet", input).Split("Not here: do not drill")[1], StringComparison.Ordinal);
        Assert.Contains("nothing to drill", Text("template", input), StringComparison.Ordinal);
        Assert.DoesNotContain("Carries", Text("labels", input), StringComparison.Ordinal);
    }

    [Fact]
    public void The_hand_over_says_what_hangs_on_what_what_it_carries_what_not_to_do_and_when_to_look()
    {
        string text = Text("hand-over", PaperSamples.ByHand([SampleAnswer.Bracket(0, new(625, 2100), "strap_toggle.medium")]));
        foreach (string said in new[] { "Curtain pole", "2 × medium strap toggle", "up to 12 kg", "not pulled", "Look after one month", "Do not climb, swing or lean on it", "Signed by the customer" }) Says(text, said);
        string doubt = Text("hand-over", PaperSamples.ByHand([SampleAnswer.Bracket(0, new(625, 2100), "strap_toggle.medium")], Verdict.CheckFirst));
        Says(doubt, "Nothing hangs yet");
        Assert.DoesNotContain("up to 12 kg", doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void A_signature_stands_under_the_sheet_that_was_signed_and_no_other()
    {
        var input = PaperSamples.ByHand([SampleAnswer.Bracket(0, new(625, 2100), "strap_toggle.medium")]);
        var signed = HandOverSheet.Of(input.Job, input.Plan).Sign(input.Job, "A. Customer", [[new(0, 0), new(500, 500), new(1000, 0)]], "s1", PaperSamples.Made);
        string text = Text("hand-over", input with { Job = signed });
        Says(text, "Signed by the customer: A. Customer");
        Says(text, "2026-01-02");
        using var file = new PdfFile(PaperSamples.Pdf("hand-over", input with { Job = signed }));
        // The frame is 90 mm by 24 mm: the first stroke runs 45 mm across and 12 mm down.
        Assert.Contains(file.Pages.SelectMany(PdfFile.Lines), l => Math.Abs(l.To.X - l.From.X - 45) < 0.05 && Math.Abs(l.From.Y - l.To.Y - 12) < 0.05);
        string other = Text("hand-over", input with { Job = signed with { Title = "Another title" } });
        Assert.DoesNotContain("A. Customer", other, StringComparison.Ordinal);
        Says(other, "It is to be signed again");
    }

    [Theory]
    [InlineData(7.39, "metric", "7.3 kg")]
    [InlineData(12.9, "metric", "12 kg")]
    [InlineData(0.999, "metric", "0.99 kg")]
    [InlineData(9.5, "metric", "9.5 kg")]
    // 1 lb = 0.45359237 kg: 7.7 kg are 16.98 lb.
    [InlineData(7.7, "imperial", "16 lb")]
    [InlineData(4.5359237, "imperial", "10 lb")]
    public void What_may_be_carried_is_never_rounded_up(double kg, string units, string shown) =>
        Assert.Equal(shown, Shows.MassAtMost(kg, new Settings { Units = units }));

    [Fact]
    public void A_label_says_what_a_thing_carries_and_only_of_what_is_ready()
    {
        Says(Text("labels", PaperSamples.ByHand([SampleAnswer.Bracket(0, new(625, 2100), "strap_toggle.medium")])), "Carries up to 12 kg");
        Assert.DoesNotContain("Carries", Text("labels", PaperSamples.ByHand([SampleAnswer.Bracket(0, new(625, 2100), "strap_toggle.medium")], Verdict.CheckFirst)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_buying_list_has_every_line_and_the_sum()
    {
        var input = PaperSamples.Input(PaperSamples.DemoHouse);
        string text = Text("buying-list", input);
        Assert.NotEmpty(input.Plan.Buy);
        foreach (var line in input.Plan.Buy) Says(text, Shows.Money(line.Price, "GBP"));
        Says(text, Shows.Money(input.Plan.BuyTotal, "GBP") + " in all");
        Says(text, "Prices are invented");
    }

    [Fact]
    public void The_quote_has_every_line_the_total_and_what_is_not_included()
    {
        var input = PaperSamples.Input(PaperSamples.DemoHouse);
        string text = Text("quote", input);
        var answer = JobQuote.Of(input.Job, input.Plan, PlanData.Embedded);
        Assert.NotEmpty(answer.Quote.Lines);
        foreach (var line in answer.Quote.Lines) Says(text, Shows.Money(line.Amount, "GBP"));
        Says(text, "Total: " + Shows.Money(answer.Quote.Total, "GBP"));
        foreach (var not in answer.NotIncluded) Says(text, Texts.Sentence(not, input.Job.Settings));
    }

    [Fact]
    public void The_working_reaches_the_clause()
    {
        var input = PaperSamples.Input(PaperSamples.DemoHouse);
        string text = Text("working", input);
        var worst = input.Plan.Items.Select(i => i.Brackets.Where(b => b.Fixing is not null).MaxBy(b => b.Utilisation)).OfType<BracketAnswer>().ToList();
        Assert.NotEmpty(worst);
        foreach (var step in worst.SelectMany(b => b.Working)) Says(text, step.Clause.Split(' ')[0]);
    }

    [Fact]
    public void The_record_of_pull_tests_has_a_row_for_every_fixing()
    {
        var input = PaperSamples.Input(PaperSamples.DemoHouse);
        string text = Text("proof-record", input);
        var tasks = ProofList.Of(input.Job, input.Plan).Tasks;
        Assert.NotEmpty(tasks);
        foreach (var task in tasks) Says(text, Shows.Force(task.LoadN, input.Job.Settings));
        foreach (var task in tasks) Says(text, Shows.Force(task.CapN, input.Job.Settings));
    }

    [Theory]
    [MemberData(nameof(PaperSamples.Ids), MemberType = typeof(PaperSamples))]
    public void An_imperial_job_has_no_metric_measure(string id)
    {
        string text = Text(id, PaperSamples.Input(PaperSamples.Imperial(PaperSamples.DemoHouse)));
        // The line that checks the print is 100 mm on every paper; build-ups and formulas are named in mm.
        if (id is "job-sheet" or "buying-list") Assert.DoesNotMatch(@"\d mm (wide|deep|up)", text);
        if (id != "working") Assert.DoesNotMatch(@"\d (kg|N|kN)\b", text);
        Assert.Equal(PaperSize.Letter, PaperSize.For(PaperSamples.Imperial(PaperSamples.DemoHouse).Settings));
    }

    private static void Says(string text, string said) => Assert.Contains(Spaces().Replace(said, " "), text, StringComparison.Ordinal);

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex("""words\.T\("([a-z_.\-]+)"|(?<=\? )"([a-z_]+)" : """)]
    private static partial Regex Code();

    /// <summary>The foot of a page has room for its number and how many there are: it once said "Page ? of ?".</summary>
    [Fact]
    public void The_report_of_a_series_counts_its_pages() => Assert.Equal("Page {0} of {1}", Pattress.Papers.Trials.TrialPaper.Of(
        Pattress.Trials.Documents.Analysis.Of(Pattress.Trials.Documents.TrialDocument.Read(Embedded.Text("data/trials/bench_invented.csv")).Value!, new()).Value!, Pattress.Papers.Documents.PaperSize.Find("a4")!, "").PageOf);
}
