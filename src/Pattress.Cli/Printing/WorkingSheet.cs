using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Working;
using Spectre.Console;

namespace Pattress.Cli.Printing;

/// <summary>What stands behind a choice: the forces, the other kinds and why not, and the calculation step by step.</summary>
internal sealed class WorkingSheet(Sheet sheet, Say say)
{
    private const int Indent = 3;

    public void Write(BracketAnswer bracket)
    {
        sheet.Gap();
        sheet.Paragraph($"Bracket {bracket.Index + 1} at {say.At(bracket.At)}", Indent, new Style(decoration: Decoration.Bold));
        sheet.Paragraph($"Planned for {say.Name(bracket.BuildUp)} ({Shows.Percent(bracket.BuildUpProbability)} likely); the worst case is {say.Name(bracket.LoadCase)}; the resistance rests on {say.Name(bracket.Basis)}.", Indent);
        foreach (var force in bracket.Forces) sheet.Item("-", Force(force), Indent);
        foreach (var other in bracket.Alternatives) sheet.Item("-", Alternative(other), Indent);
        foreach (var other in bracket.Rejected) sheet.Item("-", $"Not {say.Name(other.Fixing)}: {say.Sentence(other.Why)}", Indent);
        for (int i = 0; i < bracket.Working.Count; i++) Write(sheet, i + 1, bracket.Working[i]);
    }

    private string Force(FixingForce force) =>
        $"Fixing at {say.At(force.At)}: pulled by {Shows.Force(force.TensionN, say.Settings)}, sheared by {Shows.Force(force.ShearN, say.Settings)}.";

    private string Alternative(AlternativeAnswer other) =>
        $"Would do: {say.Name(other.Fixing)}, used to {Shows.Percent(other.Utilisation)}, governed by {say.Name(other.Governs)}, {say.Money(other.PriceEach)} each.";

    private static void Write(Sheet sheet, int number, Step step) =>
        sheet.Item($"{number}.", StepLine.Of(step.Symbol, step.Formula, step.Numbers, step.Value, step.Unit, step.Clause), Indent);
}
