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
        var sheet = new Sheet(terminal.Width, terminal.Colour);
        new PlanSheet(sheet, new Say(settings), working).Write(plan);
        return sheet.ToString();
    }

    private void Write(PlanAnswer plan)
    {
        sheet.Paragraph(plan.Title.Length > 0 ? plan.Title : "Plan", style: Bold);
        sheet.Paragraph(Say.Of(plan.Verdict), style: Say.Look(plan.Verdict));
        sheet.Paragraph(Summary(plan));
        WriteList("Before you drill", plan.Cautions);
        WriteChecks(plan.Checks);
        WriteItems(plan.Items);
        new WorkSheet(sheet, say).Write(plan);
        WriteWalls(plan.Walls);
        WriteAssumed(plan.Assumptions);
        sheet.Gap();
        sheet.Paragraph($"Pattress {plan.ProgramVersion}, data {plan.DataHash[..int.Min(12, plan.DataHash.Length)]}");
    }

    private static string Summary(PlanAnswer plan)
    {
        int Of(Verdict verdict) => plan.Items.Count(i => i.Verdict == verdict);
        return $"{Say.Count(plan.Items.Count, "thing", "things")} to hang: {Of(Verdict.Ready)} ready, {Of(Verdict.CheckFirst)} check first, {Of(Verdict.NotHere)} not here.";
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
        sheet.Heading("Checks to do first");
        for (int i = 0; i < checks.Count; i++) sheet.Item($"{i + 1}.", Check(checks[i]));
    }

    private string Check(CheckToDo check)
    {
        string where = check.At is { } at ? $"{check.Wall} at {say.At(at)}" : check.Wall;
        // Where the sentence gives the two chances itself, they are not said again.
        string worth = check.After > check.Before && check.Why.Values.Count(v => v.As == Shown.Percent) < 2 ? $" Sure now {Shows.Percent(check.Before)}, after it {Shows.Percent(check.After)}." : "";
        return $"{say.Sentence(check.Why)} On {where}, about {Shows.Value(Said.Minutes(check.Minutes), say.Settings)}; for {string.Join(", ", check.Items)}.{worth}";
    }

    private void WriteItems(IReadOnlyList<ItemAnswer> items)
    {
        sheet.Heading("To hang");
        var printer = new ItemSheet(sheet, say, working);
        for (int i = 0; i < items.Count; i++) printer.Write(i + 1, items[i]);
    }

    private void WriteWalls(IReadOnlyList<WallAnswer> walls)
    {
        if (walls.Count == 0) return;
        sheet.Heading("The walls");
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
        sheet.Heading("Assumed");
        foreach (var assumed in assumptions) sheet.Item("-", say.Sentence(assumed));
    }
}
