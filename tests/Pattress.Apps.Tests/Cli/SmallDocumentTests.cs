using System.Text.Json;

namespace Pattress.Apps.Tests.Cli;

/// <summary>The smaller questions: locate, bracket, beam and trial.</summary>
public class SmallDocumentTests
{
    private const string Bracket = """{"outline_mm":[[-20,-60],[20,-60],[20,60],[-20,60]],"fixings":[{"x_mm":0,"y_mm":40,"stiffness_n_per_mm":500},{"x_mm":0,"y_mm":-40,"stiffness_n_per_mm":500}],"bed_n_per_mm3":2.0,"load":{"n_n":60,"vy_n":-100}}""";
    private const string Beam = """{"length_mm":2000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":2000}],"loads":[{"kind":"uniform","from_mm":0,"to_mm":2000,"n_per_mm":0.1}]}""";
    // Three taps on one stud and two beside it.
    private const string Scan = """{"length_mm":2000,"readings":[{"kind":"tap","at_mm":600,"sound":"solid"},{"kind":"hole","at_mm":602,"met":"support"},{"kind":"tap","at_mm":400,"sound":"hollow"}],"zones":[{"from_mm":500,"to_mm":700}]}""";
    private const string Trial = "kind,load_n\nplug,100\nplug,120\nplug,110\nplug,0.13 kN\n";

    [Fact]
    public async Task The_forces_on_a_bracket_balance_its_load()
    {
        using var answer = JsonDocument.Parse((await Ran.Reading(Bracket, "bracket", "-", "--json")).Out);
        double pulled = answer.RootElement.GetProperty("fixings").EnumerateArray().Sum(f => f.GetProperty("tension_n").GetDouble());
        // Equilibrium: what the fixings pull less what the wall pushes is the load.
        Assert.Equal(60, pulled - answer.RootElement.GetProperty("contact_n").GetDouble(), 6);
    }

    [Fact]
    public async Task A_beam_on_two_supports_halves_its_load()
    {
        using var answer = JsonDocument.Parse((await Ran.Reading(Beam, "beam", "-", "--json")).Out);
        // Statics: w L / 2 = 0.1 x 2000 / 2.
        Assert.All(answer.RootElement.GetProperty("reactions_n").EnumerateArray(), r => Assert.Equal(100, r.GetDouble(), 6));
    }

    [Fact]
    public async Task A_trial_gives_the_mean_of_its_tests()
    {
        using var answer = JsonDocument.Parse((await Ran.Reading(Trial, "trial", "-", "--json")).Out);
        // (100 + 120 + 110 + 130) / 4.
        Assert.Equal(115, answer.RootElement.GetProperty("kinds")[0].GetProperty("mean_n").GetDouble(), 9);
    }

    [Fact]
    public async Task A_hole_that_met_the_support_is_where_the_support_is()
    {
        using var answer = JsonDocument.Parse((await Ran.Reading(Scan, "locate", "-", "--json")).Out);
        var zone = answer.RootElement.GetProperty("zones")[0];
        Assert.InRange(zone.GetProperty("best_mm").GetDouble(), 570, 635);
        Assert.True(zone.GetProperty("probability").GetDouble() > 0.9);
    }

    [Fact]
    public async Task A_batch_of_scans_answers_each_line_in_order_and_ends_with_2_for_a_bad_one()
    {
        var ran = await Ran.Reading($"{Scan}\n{{\"length_mm\":-1}}\n{Scan}\n", "locate", "-", "--batch");
        string[] lines = ran.Out.TrimEnd('\n').Split('\n');
        Assert.Equal(2, ran.Exit);
        Assert.Equal(3, lines.Length);
        Assert.Equal(lines[0], lines[2]);
        Assert.Contains("problems", lines[1]);
    }

    [Theory]
    [InlineData("bracket", Bracket)]
    [InlineData("beam", Beam)]
    [InlineData("trial", Trial)]
    [InlineData("locate", Scan)]
    public async Task Each_reads_well_as_text(string command, string document)
    {
        var ran = await Ran.Reading(document, command, "-");
        Assert.Equal(0, ran.Exit);
        Assert.Empty(ran.Error);
        Assert.DoesNotContain("_", ran.Out);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Theory]
    [InlineData("bracket")]
    [InlineData("beam")]
    [InlineData("trial")]
    [InlineData("plan")]
    [InlineData("locate")]
    public async Task Each_refuses_what_is_no_document(string command)
    {
        var ran = await Ran.Reading("{\"nonsense\": tru", command, "-");
        Assert.Equal(2, ran.Exit);
        Assert.Empty(ran.Out);
        Assert.NotEmpty(ran.Error);
    }
}
