using System.Globalization;
using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Papers.Documents;
using Pattress.Papers.Drawings;
using Pattress.Papers.Elevations;

namespace Pattress.Papers.Sheets;

/// <summary>The words of one job's papers, in its units and its English.</summary>
internal sealed class Words(PaperInput input)
{
    /// <summary>A cell with a box to tick.</summary>
    public const string Tick = Table.Tick;

    public Job Job => input.Job;

    public PlanAnswer Plan => input.Plan;

    public PaperSize Size => input.Size;

    public Settings Settings => input.Job.Settings;

    public string Language => Texts.Tag(Settings);

    public string Foot => T("foot", Said.Words(Plan.ProgramVersion), Said.Words(Plan.DataHash), Said.Words(Date));

    public string PageOf => T("page_of", Said.Words("{0}"), Said.Words("{1}"));

    public Say Saying => reason => Texts.Sentence(reason, Settings);

    /// <summary>The day that the papers were made, as both kinds of English can read it.</summary>
    public string Date => input.Made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public string T(string code, params IReadOnlyList<Said> values) => Texts.Sentence(new Reason("paper." + code, values), Settings);

    public string TitleOf(string paper) => Job.Title.Length > 0 ? T("title_of", Said.Words(T("title." + paper)), Said.Words(Job.Title)) : T("title." + paper);

    /// <summary>The head of a paper: what it is, then whose.</summary>
    public IReadOnlyList<Block> Head(string paper) => Job.Title.Length > 0
        ? [new Heading(T("title." + paper), 1), new Paragraph(Job.Title, Voice.Lead)]
        : [new Heading(T("title." + paper), 1)];

    public string Sentence(Reason reason) => Ended(Texts.Sentence(reason, Settings));

    public string Sentence(Assumption assumed)
    {
        string said = Ended(Texts.Sentence(assumed.Code, assumed.Values, Settings));
        return assumed.Source is "" or "assumed" ? said : $"{said} ({assumed.Source})";
    }

    public IReadOnlyList<string> Sentences(IEnumerable<Reason> reasons) => [.. reasons.Select(Sentence)];

    public string Name(string id) => Texts.Name(id, Settings);

    public string Length(double mm) => Shows.Length(mm, Settings);

    public string Force(double n) => Shows.Force(n, Settings);

    public string Mass(double kg) => Shows.Mass(kg, Settings);

    public string Money(decimal amount) => Shows.Money(amount, Settings.Currency);

    public static string Percent(double fraction) => Shows.Percent(fraction);

    public static string Count(int n) => n.ToString(CultureInfo.InvariantCulture);

    public string Verdict(Verdict verdict) => T("verdict." + Verdicts.Id(verdict));

    public string Letter(string item) => Letters.Of(Math.Max(0, Job.Fixtures.ToList().FindIndex(f => f.Id == item)));

    public string LettersOf(IEnumerable<string> items) => string.Join(", ", items.Select(Letter));

    public string NameOf(ItemAnswer item) => Capital(item.Name.Length > 0 ? item.Name : Name("fixture." + item.What));

    public string Titled(ItemAnswer item) => $"{Letter(item.Id)}  {NameOf(item)}";

    public string WallName(string id) => Job.Walls.FirstOrDefault(w => w.Id == id) is { Name.Length: > 0 } wall ? wall.Name : id;

    /// <summary>A bit by its id in the plan, kind and diameter.</summary>
    public string Bit(string id) => id.Split(' ') is [var kind, var mm] && double.TryParse(mm, NumberStyles.Float, CultureInfo.InvariantCulture, out double d)
        ? T("bit", Said.Length(d), Said.Name("bit." + kind))
        : Name(id);

    public string Hole(HoleAnswer hole) => hole.Bit == "none" || hole.DiameterMm <= 0
        ? T("no_hole")
        : T("hole", Said.Length(hole.DiameterMm), Said.Name("bit." + hole.Bit), Said.Length(hole.DepthMm));

    public string Fixings(BracketAnswer bracket) => bracket.Fixing is { } fixing
        ? T("fixings", Said.Count(bracket.Count), Said.Name(fixing))
        : T("no_fixing");

    /// <summary>The things of a wall with the letters they go by.</summary>
    public IReadOnlyList<Hung> On(string wall) =>
        [.. Job.Fixtures.Where(f => f.Wall == wall).Select(f => new Hung(Letter(f.Id), f, Plan.Items.FirstOrDefault(i => i.Id == f.Id)))];

    private static string Ended(string sentence) => Capital(sentence.EndsWith('.') ? sentence : sentence + ".");

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
