using System.Globalization;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Cli.Printing;

/// <summary>What to buy and in which order to work.</summary>
internal sealed class WorkSheet(Sheet sheet, Say say)
{
    public void Write(PlanAnswer plan)
    {
        WriteBuying(plan);
        WriteOrder(plan.Order);
    }

    /// <summary>The buying list by pack, and its sum.</summary>
    public void WriteBuying(PlanAnswer plan)
    {
        sheet.Heading(sheet.T("to_buy"));
        if (plan.Buy.Count == 0) { sheet.Paragraph(sheet.T("nothing")); return; }
        WriteLines(plan.Buy);
        sheet.Paragraph(sheet.T("together", Said.Money(plan.BuyTotal)));
    }

    /// <summary>Lines of a list as a table.</summary>
    public void WriteLines(IReadOnlyList<BuyLine> lines)
    {
        var table = sheet.Table("what", ">needed", ">in_van", ">packs", ">price");
        foreach (var line in lines) table.Row(line.Sort == "bit" ? say.Bit(line.Id) : say.Name(line.Id), Number(line.Needed), Number(line.FromVan), Packs(line), say.Money(line.Price));
        sheet.Write(table);
    }

    private void WriteOrder(IReadOnlyList<WorkStep> order)
    {
        if (order.Count == 0) return;
        sheet.Heading(sheet.T("order"));
        for (int i = 0; i < order.Count; i++) sheet.Item($"{i + 1}.", Step(order[i]));
    }

    private string Step(WorkStep step) => $"{say.Sentence(step.What)} {sheet.T("step", Said.Words(string.Join(", ", step.Items)))}";

    private string Packs(BuyLine line) => line.Packs == 0 ? "-" : sheet.T("packs_of", Said.Count(line.Packs), Said.Count(line.PackSize));

    private static string Number(int n) => n.ToString(CultureInfo.InvariantCulture);
}
