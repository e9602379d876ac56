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
        foreach (var step in bracket.Working) Write(sheet, step, Indent);
    }

    private string Force(FixingForce force) =>
        $"Fixing at {say.At(force.At)}: pulled by {Shows.Force(force.TensionN, say.Settings)}, sheared by {Shows.Force(force.ShearN, say.Settings)}.";

    private string Alternative(AlternativeAnswer other) =>
        $"Would do: {say.Name(other.Fixing)}, used to {Shows.Percent(other.Utilisation)}, governed by {say.Name(other.Governs)}, {say.Money(other.PriceEach)} each.";

    /// <summary>One step: symbol = formula, the numbers, the result with its clause.</summary>
    public static void Write(Sheet sheet, Step step, int indent)
    {
        string value = Shows.ThreeFigures(step.Value) + (step.Unit.Length > 0 ? " " + step.Unit : "");
        string numbers = step.Numbers.Length > 0 && step.Numbers != step.Formula ? $" = {Figures.Short(step.Numbers)}" : "";
        if (step.Symbol == Step.Case) sheet.Item("-", $"{step.Formula}: {Figures.Short(step.Numbers)}: {(step.Value != 0 ? "yes" : "no")}  [{step.Clause}]", indent);
        else sheet.Item("-", $"{step.Symbol} = {step.Formula}{numbers} = {value}  [{step.Clause}]", indent);
    }
}
