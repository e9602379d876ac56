using System.Globalization;
using Pattress.Cli.Input;
using Pattress.Cli.Printing;
using Pattress.Jobs.Buying;
using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>What to load in the van this morning, for all the jobs of the day.</summary>
internal static class LoadCommand
{
    public static async Task<int> Run(Call call)
    {
        var bought = new List<Bought>();
        foreach (string path in call.Arguments.Values)
        {
            var text = Documents.Read(path, call.Terminal);
            if (text.Value is not { } json) return Answering.Refuse(call, text.Problems);
            var one = await Bought.Of(json, call.Stop);
            if (one.Value is not { } job) return Answering.Refuse(call, one.Problems);
            bought.Add(job);
        }

        var lines = LoadList.Of([.. bought.Select(b => b.Answer.Plan)]);
        call.Terminal.Out.Write(call.Json ? LoadList.Json(lines, bought[0].Job.Settings) + "\n" : Text(call, lines, new Say(bought[0].Job.Settings)));
        return ExitCode.Answered;
    }

    private static string Text(Call call, IReadOnlyList<LoadLine> lines, Say say)
    {
        var sheet = new Sheet(call.Terminal, say.Settings);
        sheet.Heading(sheet.T("to_load"));
        if (lines.Count == 0) sheet.Paragraph(sheet.T("nothing"));
        foreach (var line in lines)
            sheet.Item(line.Count.ToString(CultureInfo.InvariantCulture).PadLeft(4), $"{(line.Sort == "bit" ? say.Bit(line.Id) : say.Name(line.Id))}: {string.Join("; ", line.Jobs)}");
        return sheet.ToString();
    }
}
