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
        sheet.Paragraph(sheet.T("bracket", Said.Count(bracket.Index + 1), Said.Words(say.At(bracket.At))), Indent, new Style(decoration: Decoration.Bold));
        sheet.Paragraph(sheet.T("bracket.basis", Said.Name(bracket.BuildUp), Said.Percent(bracket.BuildUpProbability), Said.Name(bracket.LoadCase), Said.Name(bracket.Basis)), Indent);
        foreach (var force in bracket.Forces) sheet.Item("-", Force(force), Indent);
        foreach (var other in bracket.Alternatives) sheet.Item("-", Alternative(other), Indent);
        foreach (var other in bracket.Rejected) sheet.Item("-", sheet.T("rejected", Said.Name(other.Fixing), Said.Words(say.Sentence(other.Why))), Indent);
        for (int i = 0; i < bracket.Working.Count; i++) Write(sheet, i + 1, bracket.Working[i]);
    }

    private string Force(FixingForce force) =>
        sheet.T("force", Said.Words(say.At(force.At)), Said.Force(force.TensionN), Said.Force(force.ShearN));

    private string Alternative(AlternativeAnswer other) =>
        sheet.T("alternative", Said.Name(other.Fixing), Said.Percent(other.Utilisation), Said.Name(other.Governs), Said.Money(other.PriceEach));

    private static void Write(Sheet sheet, int number, Step step) =>
        sheet.Item($"{number}.", StepLine.Of(sheet, step.Symbol, step.Formula, step.Numbers, step.Value, step.Unit, step.Clause), Indent);
}
