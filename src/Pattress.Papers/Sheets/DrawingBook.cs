using Pattress.Jobs;
using Pattress.Papers.Brackets;
using Pattress.Papers.Drawings;
using Pattress.Papers.Elevations;
using Pattress.Papers.Sections;
using Pattress.Papers.Templates;

namespace Pattress.Papers.Sheets;

/// <summary>The drawings of a job, each to stand alone: walls, sections going in and set, brackets with forces, templates.</summary>
public static class DrawingBook
{
    private static readonly Sizing Wide = new(900, 12.8), Narrow = new(440, 12.8);

    public static IEnumerable<Drawing> All(PaperInput input)
    {
        var words = new Words(input);
        foreach (var wall in input.Job.Walls)
            yield return ElevationDrawing.Of(new(wall, input.Plan.Walls.FirstOrDefault(w => w.Id == wall.Id), words.On(wall.Id), Datum.Corner), Wide, words.Saying);
        foreach (var item in input.Plan.Items)
            foreach (var bracket in item.Brackets.Where(b => b.Fixing is not null))
                foreach (var drawing in Of(item, bracket, words)) yield return drawing;
    }

    private static IEnumerable<Drawing> Of(ItemAnswer item, BracketAnswer bracket, Words words)
    {
        string own = $"{item.Id}-{bracket.Index + 1}";
        if (Shapes.Of(bracket) is { } shape)
            foreach (var stage in SectionDrawing.Stages(shape.Kind))
                yield return SectionDrawing.Of($"section-{own}{(stage == Stage.GoingIn ? "-before" : "")}", bracket.Section, shape, bracket.Plate.ThicknessMm, Narrow, words.Saying, stage);
        if (bracket.Plate.Outline.Count > 2 && bracket.Forces.Count > 0) yield return BracketDrawing.Of("bracket-" + own, bracket, Narrow, words.Saying);
        if (item.Verdict != Verdict.NotHere && bracket.Holes.Count > 0)
            yield return TemplateDrawing.Of("template-" + own, words.T("bracket_of", Said.Words(words.Titled(item)), Said.Count(bracket.Index + 1)), [bracket], words.Saying);
    }
}
