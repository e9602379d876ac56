using System.Text.RegularExpressions;
using Pattress.Jobs;
using Pattress.Jobs.Proofs;
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
        foreach (string said in new[] { "Curtain pole", "2 × strap toggle, medium", "up to 12 kg", "after 1 month, then every 12 months", "swings on it", "Signed by the customer" }) Says(text, said);
        Assert.DoesNotContain("Not settled", text, StringComparison.Ordinal);
        Says(Text("hand-over", PaperSamples.ByHand([SampleAnswer.Bracket(0, new(625, 2100), "strap_toggle.medium")], Verdict.CheckFirst)), "do not hang it");
    }

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
        var proofs = ProofOf.All(input.Plan, input.Job).Where(p => p.Verdict != Verdict.NotHere).ToList();
        Assert.Contains(proofs, p => p.Pulls.Count > 0);
        foreach (var pull in proofs.SelectMany(p => p.Pulls))
            Says(text, $"{Shows.Force(pull.LoadN, input.Job.Settings)} {Shows.Force(pull.DamageCapN, input.Job.Settings)}");
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
}
