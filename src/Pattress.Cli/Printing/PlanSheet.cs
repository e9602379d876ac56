using Pattress.Jobs;
using Pattress.Jobs.Text;
using Spectre.Console;

namespace Pattress.Cli.Printing;

/// <summary>A plan as a page of text that a fitter could drill by.</summary>
internal sealed class PlanSheet(Sheet sheet, Say say, bool working)
{
    private static readonly Style Bold = new(decoration: Decoration.Bold);

    /// <summary>The text of a plan.</summary>
    public static string Text(PlanAnswer plan, Settings settings, Terminal terminal, bool working)
    {
        var sheet = new Sheet(terminal, settings);
        new PlanSheet(sheet, new Say(settings), working).Write(plan);
        return sheet.ToString();
    }

    private void Write(PlanAnswer plan)
    {
        sheet.Paragraph(plan.Title.Length > 0 ? plan.Title : sheet.T("plan"), style: Bold);
        sheet.Paragraph(sheet.Verdict(plan.Verdict), style: Say.Look(plan.Verdict));
        sheet.Paragraph(Summary(plan));
        WriteList(sheet.T("before_drilling"), plan.Cautions);
        WriteChecks(plan.Checks);
        WriteItems(plan.Items);
        new WorkSheet(sheet, say).Write(plan);
        WriteWalls(plan.Walls);
        WriteAssumed(plan.Assumptions);
        sheet.Gap();
        sheet.Paragraph(sheet.T("version", Said.Words(plan.ProgramVersion), Said.Words(plan.DataHash[..int.Min(12, plan.DataHash.Length)])));
    }

    private string Summary(PlanAnswer plan)
    {
        Said Of(Verdict verdict) => Said.Count(plan.Items.Count(i => i.Verdict == verdict));
        return sheet.T(plan.Items.Count == 1 ? "summary.one" : "summary", Said.Count(plan.Items.Count), Of(Verdict.Ready), Of(Verdict.CheckFirst), Of(Verdict.NotHere));
    }

    private void WriteList(string heading, IReadOnlyList<Reason> reasons)
    {
        if (reasons.Count == 0) return;
        sheet.Heading(heading);
        foreach (var reason in reasons) sheet.Item("-", say.Sentence(reason));
    }

    private void WriteChecks(IReadOnlyList<CheckToDo> checks)
    {
        if (checks.Count == 0) return;
        sheet.Heading(sheet.T("checks"));
        for (int i = 0; i < checks.Count; i++) sheet.Item($"{i + 1}.", Check(checks[i]));
    }

    private string Check(CheckToDo check)
    {
        // Where the sentence gives the two chances itself, they are not said again.
        string worth = check.After > check.Before && check.Why.Values.Count(v => v.As == Shown.Percent) < 2 ? " " + sheet.T("check.worth", Said.Percent(check.Before), Said.Percent(check.After)) : "";
        return $"{say.Sentence(check.Why)} {sheet.T(check.At is null ? "check" : "check.at", Said.Words(check.Wall), Said.Minutes(check.Minutes), Said.Words(string.Join(", ", check.Items)), Said.Words(check.At is { } at ? say.At(at) : ""))}{worth}";
    }

    private void WriteItems(IReadOnlyList<ItemAnswer> items)
    {
        sheet.Heading(sheet.T("to_hang"));
        var printer = new ItemSheet(sheet, say, working);
        for (int i = 0; i < items.Count; i++) printer.Write(i + 1, items[i]);
    }

    private void WriteWalls(IReadOnlyList<WallAnswer> walls)
    {
        if (walls.Count == 0) return;
        sheet.Heading(sheet.T("walls"));
        foreach (var wall in walls) sheet.Item("-", Wall(wall));
    }

    private string Wall(WallAnswer wall)
    {
        var chances = wall.BuildUps.Take(3).Where((c, i) => i == 0 || c.Probability >= 0.02)
            .Select(c => $"{say.Name(c.BuildUp)} {Shows.Percent(c.Probability)}");
        return $"{(wall.Name.Length > 0 ? wall.Name : wall.Id)} ({wall.Id}): {string.Join("; ", chances)}.";
    }

    private void WriteAssumed(IReadOnlyList<Actions.Assumption> assumptions)
    {
        if (assumptions.Count == 0) return;
        sheet.Heading(sheet.T("assumed"));
        foreach (var assumed in assumptions) sheet.Item("-", say.Sentence(assumed));
    }
}
