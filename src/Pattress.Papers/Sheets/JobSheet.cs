using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Papers.Elevations;

namespace Pattress.Papers.Sheets;

/// <summary>The sheet that the fitter works from: cautions, checks, walls with their schedule of fixings, order of work.</summary>
internal static class JobSheet
{
    public static IReadOnlyList<Block> Blocks(Words words) =>
    [
        .. words.Head("job-sheet"),
        new Paragraph(Summary(words), Voice.Lead),
        new Heading(words.T("before")),
        new Listing(words.Sentences(words.Plan.Cautions), Bullet.Box),
        .. Checks(words),
        .. Order(words),
        .. words.Job.Walls.Where(w => words.On(w.Id).Count > 0).SelectMany(w => Wall(w, words)),
        .. Assumed(words),
    ];

    public static string Summary(Words words)
    {
        Said Of(Verdict verdict) => Said.Count(words.Plan.Items.Count(i => i.Verdict == verdict));
        return words.T("summary", Said.Count(words.Plan.Items.Count), Of(Verdict.Ready), Of(Verdict.CheckFirst), Of(Verdict.NotHere));
    }

    public static IReadOnlyList<Block> Assumed(Words words) => words.Plan.Assumptions.Count == 0 ? [] :
        [new Heading(words.T("assumed")), new Listing([.. words.Plan.Assumptions.Select(words.Sentence)])];

    private static IReadOnlyList<Block> Checks(Words words) => words.Plan.Checks.Count == 0 ? [] :
        [new Heading(words.T("checks")), new Listing([.. words.Plan.Checks.Select(c => Check(c, words))], Bullet.Box)];

    private static string Check(CheckToDo check, Words words)
    {
        Said items = Said.Words(words.LettersOf(check.Items)), wall = Said.Words(words.WallName(check.Wall)), minutes = Said.Minutes(check.Minutes);
        string where = check.At is { } at
            ? words.T("check_at", wall, Said.Length(at.X), Said.Length(at.Y), items, minutes)
            : words.T("check_on", wall, items, minutes);
        return words.Sentence(check.Why) + " " + where;
    }

    private static IEnumerable<Block> Wall(Wall wall, Words words)
    {
        var things = words.On(wall.Id);
        var answer = words.Plan.Walls.FirstOrDefault(w => w.Id == wall.Id);
        yield return new Heading(words.WallName(wall.Id));
        yield return new Pictures([ElevationDrawing.Of(new(wall, answer, things, Datum.Corner), words.Size.Wide, words.Saying)]);
        if (answer is { BuildUps: [var likeliest, ..] })
            yield return new Paragraph(words.T("likeliest", Said.Name(likeliest.BuildUp), Said.Percent(likeliest.Probability)));
        yield return new Paragraph(words.T(wall.Kind == "ceiling" ? "datum_ceiling" : "datum"), Voice.Note);
        foreach (var item in things.Select(t => t.Answer).OfType<ItemAnswer>())
            foreach (var block in ItemBlocks.Schedule(item, words)) yield return block;
    }

    private static IReadOnlyList<Block> Order(Words words)
    {
        if (words.Plan.Order.Count == 0) return [];
        return
        [
            new Heading(words.T("order")),
            new Listing([.. words.Plan.Order.Select(s => words.T("step", Said.Words(words.Sentence(s.What)), Said.Words(words.LettersOf(s.Items))))], Bullet.Number),
            new Heading(words.T("bits"), 3),
            new Listing([.. words.Plan.Buy.Where(l => l.Sort is "bit" or "tool").Select(l => l.Sort == "bit" ? words.Bit(l.Id) : words.Name(l.Id))]),
        ];
    }
}
