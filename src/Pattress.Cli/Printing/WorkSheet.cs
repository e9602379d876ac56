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
        sheet.Heading("To buy");
        if (plan.Buy.Count == 0) { sheet.Paragraph("Nothing."); return; }
        WriteLines(plan.Buy);
        sheet.Paragraph($"Together {say.Money(plan.BuyTotal)}");
    }

    /// <summary>Lines of a list as a table.</summary>
    public void WriteLines(IReadOnlyList<BuyLine> lines)
    {
        var table = Columns.Of("What", ">Needed", ">In the van", ">Packs", ">Price");
        foreach (var line in lines) table.Row(line.Sort == "bit" ? say.Bit(line.Id) : say.Name(line.Id), Number(line.Needed), Number(line.FromVan), Packs(line), say.Money(line.Price));
        sheet.Write(table);
    }

    private void WriteOrder(IReadOnlyList<WorkStep> order)
    {
        if (order.Count == 0) return;
        sheet.Heading("Order of work");
        for (int i = 0; i < order.Count; i++) sheet.Item($"{i + 1}.", Step(order[i]));
    }

    private string Step(WorkStep step) => $"{say.Sentence(step.What)} For {string.Join(", ", step.Items)}.";

    private static string Packs(BuyLine line) => line.Packs == 0 ? "-" : $"{Number(line.Packs)} of {Number(line.PackSize)}";

    private static string Number(int n) => n.ToString(CultureInfo.InvariantCulture);
}
