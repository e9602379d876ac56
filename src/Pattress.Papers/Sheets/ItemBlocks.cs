using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Papers.Sections;
using Pattress.Papers.Templates;

namespace Pattress.Papers.Sheets;

/// <summary>One thing to hang on the fitter's sheet: verdict, why, schedule of fixings, sections.</summary>
internal static class ItemBlocks
{
    public static IEnumerable<Block> Schedule(ItemAnswer item, Words words)
    {
        yield return new Heading(words.Titled(item), 3);
        yield return new Paragraph(words.Verdict(item.Verdict), Voice.Boxed);
        yield return new Paragraph(words.Sentence(item.Why) + " " + words.T("weighs", Said.Mass(item.MassKg)));
        if (item.Remedies.Count > 0) yield return new Listing(words.Sentences(item.Remedies));
        if (item.Verdict == Verdict.NotHere) yield break;
        if (item.Brackets.Count > 0) yield return Holes(item, words);
        if (Sections(item, words) is { Count: > 0 } sections) yield return new Pictures(sections);
        foreach (string next in Next(item, words)) yield return new Paragraph(next, Voice.Note);
        if (item.Cautions.Count > 0) yield return new Listing(words.Sentences(item.Cautions), Bullet.Box);
    }

    private static Table Holes(ItemAnswer item, Words words) => new(
        words.T("schedule", Said.Words(words.Titled(item))),
        [
            new(words.T("col.bracket"), 9), new(words.T("col.from_left"), 14, true), new(words.T("col.up"), 14, true),
            new(words.T("col.hole"), 34), new(words.T("col.fixing"), 32), new(words.T("col.support"), 13, true), new(words.T("col.done"), 9),
        ],
        [.. item.Brackets.SelectMany(b => Rows(b, words))]);

    private static IEnumerable<IReadOnlyList<string>> Rows(BracketAnswer bracket, Words words)
    {
        string number = Words.Count(bracket.Index + 1);
        if (bracket.Fixing is null) return [[number, words.Length(bracket.At.X), words.Length(bracket.At.Y), "", words.T("no_fixing"), "", ""]];
        return bracket.Holes.Select((h, i) => (IReadOnlyList<string>)
        [
            HoleMark.Of(bracket, i), words.Length(h.At.X), words.Length(h.At.Y), Hole(h, words),
            words.Name(bracket.Fixing), bracket.IntoSupport ? Words.Percent(h.SupportProbability) : words.T("not_wanted"), Words.Tick,
        ]);
    }

    private static string Hole(HoleAnswer hole, Words words) =>
        words.Hole(hole) + (hole.Strip.Length > 0 ? "; " + words.T("in_strip", Said.Words(hole.Strip.Replace('_', ' '))) : "");

    /// <summary>Each way in which a fixing is set here, once: going in, and set.</summary>
    private static List<Drawings.Drawing> Sections(ItemAnswer item, Words words)
    {
        var drawn = new List<Drawings.Drawing>();
        foreach (var bracket in item.Brackets.Where(b => b.Fixing is not null).DistinctBy(b => (b.Fixing, b.BuildUp, b.IntoSupport)))
        {
            if (Shapes.Of(bracket) is not { } shape) continue;
            foreach (var stage in SectionDrawing.Stages(shape.Kind))
                drawn.Add(SectionDrawing.Of($"section-{item.Id}-{bracket.Index}-{stage}", bracket.Section, shape, bracket.Plate.ThicknessMm, words.Size.Half, words.Saying, stage));
        }
        return drawn;
    }

    private static IEnumerable<string> Next(ItemAnswer item, Words words) =>
        item.Brackets.Where(b => b is { Fixing: not null, NextKind: not null }).Select(b => (b.Fixing, b.NextKind)).Distinct()
            .Select(p => words.T("next_kind", Said.Name(p.Fixing!), Said.Name(p.NextKind!)));
}
