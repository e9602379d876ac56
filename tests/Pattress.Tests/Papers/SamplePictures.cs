using System.Text.RegularExpressions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Papers.Drawings;
using Pattress.Papers.Elevations;
using Pattress.Papers.Sections;

namespace Pattress.Tests.Papers;

/// <summary>
/// The pictures on the samples' pages: each wall with what hangs on it, and the section at the first bracket. With
/// PATTRESS_GOLDEN=write a run writes them, to be looked at before they are committed; such a run fails.
/// </summary>
public partial class SamplePictures
{
    private static readonly Sizing Size = new(720, 13);

    public static TheoryData<string> Names => [.. Embedded.Names("samples/").Select(n => n["samples/".Length..^".job.json".Length])];

    [Theory]
    [MemberData(nameof(Names))]
    public void Pictures_are_up_to_date(string name)
    {
        var job = JobReader.Read(Embedded.Text($"samples/{name}.job.json")).Value!;
        var plan = Planner.Plan(job, PlanData.Embedded);
        string Say(Reason reason) => Texts.Sentence(reason, job.Settings);
        var stale = new List<string>();
        foreach (var wall in job.Walls) Compare($"{name}-{wall.Id}.svg", Elevation(job, plan, wall, Say), stale);
        if (plan.Items.SelectMany(i => i.Brackets).FirstOrDefault(b => b.Fixing is not null) is { } bracket) Compare($"{name}-section.svg", Section(bracket, Say), stale);
        Assert.Equal([], stale);
    }

    private static Drawing Elevation(Job job, PlanAnswer plan, Wall wall, Say say)
    {
        var things = job.Fixtures.Select((f, i) => (f, i)).Where(p => p.f.Wall == wall.Id)
            .Select(p => new Hung(((char)('A' + p.i)).ToString(), p.f, plan.Items.Single(a => a.Id == p.f.Id)));
        return ElevationDrawing.Of(new(wall, plan.Walls.Single(w => w.Id == wall.Id), [.. things], Datum.Corner), Size, say);
    }

    private static Drawing Section(BracketAnswer bracket, Say say)
    {
        var size = FixingCatalogue.FromEmbedded.Find(bracket.Fixing!)!;
        var shape = new FixingShape(size.Kind.Id, bracket.Holes[0].DiameterMm, size.BearsLongMm, size.ScrewMm, size.HeadMm, size.LengthMm);
        return SectionDrawing.Of("section", bracket.Section, shape, bracket.Plate.ThicknessMm, Size with { WidthPx = 420 }, say);
    }

    private static void Compare(string name, Drawing drawing, List<string> stale)
    {
        string file = Path.Combine(Rules.SourceTree.Root, "docs", "samples", name), text = ByItself(Svg.Of(drawing));
        if (Environment.GetEnvironmentVariable("PATTRESS_GOLDEN") == "write") File.WriteAllText(file, text);
        else if (File.Exists(file) && File.ReadAllText(file) == text) return;
        stale.Add(name);
    }

    /// <summary>With the page's own look inside, so that a viewer needs nothing else.</summary>
    private static string ByItself(string svg) => svg.Insert(svg.IndexOf('>', StringComparison.Ordinal) + 1, "<style>" + Look.Value + "</style>") + "\n";

    private static readonly Lazy<string> Look = new(() =>
    {
        string css = File.ReadAllText(Path.Combine(Rules.SourceTree.Root, "src", "Pattress.Web", "wwwroot", "css", "pattress.css"));
        var light = Colour().Matches(css[..css.IndexOf('}', StringComparison.Ordinal)]).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
        string rules = string.Join(' ', Rule().Matches(css).Select(m => m.Value.Trim()).Where(r => !r.Contains("display", StringComparison.Ordinal)));
        return ".drawing{background:#fbfaf6;font-family:sans-serif;font-size:16px} " + Variable().Replace(rules, m => light[m.Groups[1].Value]).Replace("rem", "em", StringComparison.Ordinal);
    });

    [GeneratedRegex(@"--([a-z-]+): (#[0-9a-f]{6});")]
    private static partial Regex Colour();

    [GeneratedRegex(@"^\.drawing [^{]*\{[^}]*\}", RegexOptions.Multiline)]
    private static partial Regex Rule();

    [GeneratedRegex(@"var\(--([a-z-]+)\)")]
    private static partial Regex Variable();
}
