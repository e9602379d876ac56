using Pattress.Jobs;
using Pattress.Jobs.Buying;
using Pattress.Jobs.Text;

namespace Pattress.Cli.Printing;

/// <summary>The shopping as people read it.</summary>
internal sealed class BuySheet(Sheet sheet, Say say)
{
    public void Write(BuyAnswer answer)
    {
        var work = new WorkSheet(sheet, say);
        work.WriteBuying(answer.Plan);
        foreach (var line in answer.Plan.Buy) sheet.Item("-", $"{Name(line)}: {say.Sentence(line.Why!)} ({string.Join(", ", line.Items)})");
        WriteGivingUp(answer);
        if (answer.Status is "optimal" or "feasible") WriteProof(answer);
        if (answer.Mix is { } mix)
        {
            sheet.Heading(sheet.T("mix", Said.Money(mix.Saving)));
            work.WriteLines(mix.Lines);
        }

        foreach (var note in answer.Notes) sheet.Item("!", say.Sentence(note));
        if (answer.Assumptions.Count > 0) sheet.Heading(sheet.T("assumed"));
        foreach (var assumed in answer.Assumptions) sheet.Item("-", say.Sentence(assumed));
    }

    private void WriteProof(BuyAnswer answer)
    {
        sheet.Gap();
        string proof = answer.Status == "optimal" ? sheet.T("cheapest") : sheet.T("cheapest.bound", Said.Money(answer.Bound));
        sheet.Paragraph(sheet.T("expected", Said.Money(answer.Expected), Said.Words(proof), Said.Words(answer.Solver), Said.Percent(answer.SecondTrip)));
    }

    private void WriteGivingUp(BuyAnswer answer)
    {
        for (int i = 0; i < answer.GiveUp.Count; i++)
            sheet.Item($"{i + 1}.", sheet.T("give_up", Said.Words(answer.GiveUp[i].Select(r => say.Sentence(r).TrimEnd('.')).Aggregate((a, b) => sheet.T("and", Said.Words(b), Said.Words(a))))));
    }

    private string Name(BuyLine line) => line.Sort == "bit" ? say.Bit(line.Id) : say.Name(line.Id);
}
