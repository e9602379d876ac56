using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Pattress.Apps.Tests.Cli;

/// <summary>The chart and the report of a bench series.</summary>
public sealed class TrialReportTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("pattress-report").FullName;

    private static string Bench => Path.Combine(Samples.Root, "data", "trials", "bench_invented.csv");

    private string In(string name) => File.ReadAllText(Path.Combine(_folder, name));

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public async Task The_chart_has_a_mark_for_every_test_and_says_that_the_series_is_invented()
    {
        string file = Path.Combine(_folder, "deep", "chart.svg");
        Assert.Equal(0, (await Ran.Pattress("trial", Bench, "--svg", file)).Exit);
        var svg = XDocument.Parse(File.ReadAllText(file)).Root!;
        int dots = svg.Descendants().Count(e => e.Name.LocalName == "ellipse" || e.Name.LocalName == "circle");
        // 33 tests, of which one was stopped (a triangle); one more dot stands in the key.
        int failed = File.ReadLines(Bench).Count(l => l.Contains(",failed,", StringComparison.Ordinal));
        Assert.Equal(failed + 1, dots);
        Assert.Contains("INVENTED", svg.Value, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_report_has_every_test_its_conditions_and_what_may_not_be_concluded()
    {
        Assert.Equal(0, (await Ran.Pattress("trial", Bench, "--report", _folder)).Exit);
        string page = In("report.html");
        int tests = File.ReadLines(Bench).Count(l => l.Contains(",invented", StringComparison.Ordinal) && !l.StartsWith('#'));
        Assert.Equal(tests, Regex.Count(page, "<td>(failed|stopped)</td>"));
        Assert.Contains("INVENTED bench series", page, StringComparison.Ordinal);
        Assert.Contains("board: 12.5 mm gypsum board", page, StringComparison.Ordinal);
        Assert.Contains("What may not be concluded", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.Equal("%PDF-", System.Text.Encoding.ASCII.GetString(File.ReadAllBytes(Path.Combine(_folder, "report.pdf")), 0, 5));
        Assert.Equal(tests + 2, In("tests.csv").Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    /// <summary>What the report gives of the tests is read again as the same series.</summary>
    [Fact]
    public async Task The_reports_csv_gives_the_same_answer()
    {
        await Ran.Pattress("trial", Bench, "--report", _folder);
        static string Numbers(string json) => Regex.Replace(json, "\"line\": \\d+", "");
        var again = await Ran.Pattress("trial", Path.Combine(_folder, "tests.csv"), "--json");
        Assert.Equal(Regex.Matches(Numbers(In("answer.json")), "\"(mean_n|value_n|fractile_n)\": [^,\n]+").Select(m => m.Value), Regex.Matches(Numbers(again.Out), "\"(mean_n|value_n|fractile_n)\": [^,\n]+").Select(m => m.Value));
    }

    [Fact]
    public async Task What_a_user_wrote_cannot_become_markup()
    {
        var ran = await Ran.Reading("kind,load_n,note\n<b>x</b>,100,<script>alert(1)</script>\n", "trial", "-", "--report", _folder);
        Assert.Equal(0, ran.Exit);
        Assert.DoesNotContain("<script", In("report.html"), StringComparison.Ordinal);
        Assert.NotNull(XDocument.Parse(In("tests.svg")).Root);
    }

    [Theory]
    [InlineData("--svg")]
    [InlineData("--report")]
    public async Task A_switch_without_its_file_is_refused(string option)
    {
        var ran = await Ran.Pattress("trial", Bench, option);
        Assert.Equal(2, ran.Exit);
        Assert.Contains(option, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_place_that_cannot_be_written_is_named()
    {
        var ran = await Ran.Pattress("trial", Bench, "--svg", "/proc/no/such.svg");
        Assert.Equal(2, ran.Exit);
        Assert.Contains("/proc/no/such.svg", ran.Error, StringComparison.Ordinal);
    }
}
