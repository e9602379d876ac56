using Pattress.Jobs;
using Pattress.Papers.Documents;
using Pattress.Papers.Templates;

namespace Pattress.Papers.Sheets;

/// <summary>The drilling templates at true size: one a thing where it is small enough, else one a bracket.</summary>
internal static class TemplateSheet
{
    /// <summary>A thing whose holes lie further apart than this is drilled bracket by bracket: paper in many parts does not stay true.</summary>
    public const double WholeMm = 450;

    public static IReadOnlyList<Block> Blocks(Words words)
    {
        var items = words.Plan.Items.Where(i => i.Verdict != Verdict.NotHere && i.Brackets.Any(b => b.Holes.Count > 0)).ToList();
        return
        [
            .. words.Head("template"),
            new Paragraph(words.T("template_lead"), Voice.Lead),
            new Listing([words.T("template_how.print"), words.T("template_how.measure"), words.T("template_how.level"), words.T("template_how.check")], Bullet.Number),
            .. items.Count == 0 ? [new Paragraph(words.T("template_nothing"))] : items.SelectMany(i => Parts(i, words)),
        ];
    }

    private static IEnumerable<Block> Parts(ItemAnswer item, Words words)
    {
        var brackets = item.Brackets.Where(b => b.Holes.Count > 0).ToList();
        var says = new TrueSizeWords(words.T("true.check"), words.T("true.tile", Said.Words("{0}"), Said.Words("{1}"), Said.Words("{2}"), Said.Words("{3}")),
            words.T("true.join"), words.T("true.hundred"), words.Settings.Units == "imperial" ? words.T("true.inches") : "");
        if (TemplateDrawing.IsWithin(brackets, WholeMm)) return [One(item, brackets, words.Titled(item), says, words)];
        return brackets.Select(b => One(item, [b], words.T("bracket_of", Said.Words(words.Titled(item)), Said.Count(b.Index + 1)), says, words));
    }

    private static TrueSize One(ItemAnswer item, IReadOnlyList<BracketAnswer> brackets, string heading, TrueSizeWords says, Words words) =>
        new(TemplateDrawing.Of($"template-{item.Id}-{brackets[0].Index}", heading, brackets, words.Saying), heading, says);
}
