using System.Globalization;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Papers.Brackets;
using Pattress.Papers.Documents;
using Pattress.Working;

namespace Pattress.Papers.Sheets;

/// <summary>The working for the engineer: what was taken, each bracket, and down to the clause for the bracket that is used most.</summary>
internal static class WorkingSheet
{
    public static IReadOnlyList<Block> Blocks(Words words) =>
    [
        .. words.Head("working"),
        new Paragraph(words.T("working_lead"), Voice.Lead),
        Settings(words),
        .. JobSheet.Assumed(words),
        .. words.Plan.Items.SelectMany(i => Item(i, words)),
    ];

    private static Table Settings(Words words)
    {
        var s = words.Settings;
        return new(words.T("taken"), [new(words.T("col.what"), 60), new(words.T("col.value"), 40)],
        [
            [words.T("set.standards"), words.T("standards." + s.Standards)],
            [words.T("set.life"), words.T("years", Said.Plain(s.LifeYears))],
            [words.T("set.permanent"), Shows.ThreeFigures(s.GammaPermanent)],
            [words.T("set.variable"), Shows.ThreeFigures(s.GammaVariable)],
            [words.T("set.service"), Words.Count(s.ServiceClass)],
        ]);
    }

    private static IEnumerable<Block> Item(ItemAnswer item, Words words)
    {
        yield return new Heading(words.Titled(item));
        yield return new Paragraph($"{words.Verdict(item.Verdict)}. {words.Sentence(item.Why)}");
        yield return new Paragraph(words.T("item_taken", Said.Words(words.WallName(item.Wall)), Said.Mass(item.MassKg), Said.Name("class." + Jobs.Text.Words.Of(item.Class)),
            Said.Percent(item.ProbabilityOfFailure), Said.Percent(item.TargetProbability)));
        if (item.Brackets.Count > 0) yield return Brackets(item, words);
        if (item.Brackets.Where(b => b.Fixing is not null).MaxBy(b => b.Utilisation) is { } worst)
            foreach (var block in Worst(item, worst, words)) yield return block;
        if (item.Assumptions.Count > 0)
        {
            yield return new Heading(words.T("assumed"), 3);
            yield return new Listing([.. item.Assumptions.Select(words.Sentence)]);
        }
    }

    private static Table Brackets(ItemAnswer item, Words words) => new(
        words.T("brackets_of", Said.Words(words.Titled(item))),
        [
            new(words.T("col.number"), 11), new(words.T("col.fixing"), 27), new(words.T("col.build_up"), 30), new(words.T("col.case"), 25),
            new(words.T("col.governs"), 24), new(words.T("col.used"), 11, true), new(words.T("col.failure"), 12, true),
        ],
        [.. item.Brackets.Select(b => (IReadOnlyList<string>)
        [
            Words.Count(b.Index + 1), words.Fixings(b), words.T("likely", Said.Name(b.BuildUp), Said.Percent(b.BuildUpProbability)),
            b.Fixing is null ? "" : words.Name("case." + b.LoadCase), b.Fixing is null ? "" : words.Name("mechanism." + b.Governs),
            b.Fixing is null ? "" : Words.Percent(b.Utilisation), b.Fixing is null ? "" : Words.Percent(b.ProbabilityOfFailure),
        ])]);

    private static IEnumerable<Block> Worst(ItemAnswer item, BracketAnswer worst, Words words)
    {
        yield return new Heading(words.T("worst", Said.Count(worst.Index + 1), Said.Name("basis." + worst.Basis)), 3);
        if (worst.Plate.Outline.Count > 2 && worst.Forces.Count > 0)
            yield return new Pictures([BracketDrawing.Of($"bracket-{item.Id}-{worst.Index}", worst, words.Size.Half, words.Saying)]);
        if (worst.Working.Count > 0) yield return Steps(worst, words);
        if (worst.Alternatives.Count > 0)
            yield return new Paragraph(words.T("alternatives", Said.Words(string.Join("; ", worst.Alternatives.Select(a => $"{words.Name(a.Fixing)} ({Words.Percent(a.Utilisation)})")))), Voice.Note);
        if (worst.Rejected.Count > 0)
        {
            yield return new Paragraph(words.T("rejected"), Voice.Note);
            yield return new Listing([.. worst.Rejected.Select(r => $"{words.Name(r.Fixing)}: {words.Sentence(r.Why)}")]);
        }
    }

    private static Table Steps(BracketAnswer bracket, Words words) => new(
        words.T("working_of", Said.Count(bracket.Index + 1)),
        [new(words.T("col.symbol"), 13), new(words.T("col.formula"), 54), new(words.T("col.result"), 17, true), new(words.T("col.clause"), 30)],
        [.. bracket.Working.Select(step => Row(step, words))])
    {
        Formulas = bracket.Working.SelectMany(Formulas).ToDictionary(),
    };

    private static IEnumerable<KeyValuePair<(int Row, int Column), IReadOnlyList<Setting>>> Formulas(Step step, int row)
    {
        bool condition = step.Symbol == Step.Case;
        if (!condition) yield return new((row, 0), [FormulaSetting.Symbol(step.Symbol)]);
        if (!IsNumber(step)) yield return new((row, 1), [FormulaSetting.Formula(step.Formula), .. Numbers(step)]);
        if (!condition) yield return new((row, 2), [FormulaSetting.Result(Shows.ThreeFigures(step.Value), step.Unit)]);
    }

    private static IEnumerable<Setting> Numbers(Step step) => step.Inputs.Count == 0 ? []
        : [FormulaSetting.Row(new SetSign(step.Symbol == Step.Case ? ":" : "="), FormulaSetting.Numbers(step.Numbers, Shows.FiveFigures))];

    // From a table: the formula is the number itself, which stands under the result.
    private static bool IsNumber(Step step) => double.TryParse(step.Formula, CultureInfo.InvariantCulture, out _);

    private static IReadOnlyList<string> Row(Step step, Words words) => step.Symbol == Step.Case
        ? ["", FormulaText.Formula(step.Formula), words.T(step.Value != 0 ? "working_so" : "working_not_so"), step.Clause]
        : [FormulaText.Symbol(step.Symbol), IsNumber(step) ? "" : FormulaText.Formula(step.Formula), $"{Shows.ThreeFigures(step.Value)} {step.Unit}".TrimEnd(), step.Clause];
}
