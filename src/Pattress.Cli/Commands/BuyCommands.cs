using Pattress.Cli.Input;
using Pattress.Cli.Printing;
using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>Where brackets go, what to buy for a job, and what it costs the customer.</summary>
internal static class BuyCommands
{
    public static Task<int> Buy(Call call) => Run(call, Questions.Buy, (sheet, bought) => new BuySheet(sheet, new Say(bought.Job.Settings)).Write(bought.Answer));

    public static Task<int> Quote(Call call) => Run(call, Questions.Quote, (sheet, bought) => new QuoteSheet(sheet, new Say(bought.Job.Settings)).Write(bought.Quote));

    public static int Layout(Call call)
    {
        if (call.Json || call.Arguments.Has("--batch")) return Answering.Document(call, json => Questions.Layout(json, call.Stop));
        var text = call.Read();
        if (text.Value is not { } job) return Answering.Refuse(call, text.Problems);
        var laid = LaidOut.Of(job, call.Stop);
        if (laid.Value is not { } answer) return Answering.Refuse(call, laid.Problems);
        var sheet = new Sheet(call.Terminal, answer.Settings);
        new LayoutSheet(sheet, new Say(answer.Settings)).Write(answer.Answer);
        call.Terminal.Out.Write(sheet.ToString());
        return ExitCode.Answered;
    }

    private static async Task<int> Run(Call call, Func<string, CancellationToken, Task<Reply>> ask, Action<Sheet, Bought> show)
    {
        if (call.Arguments.Has("--batch")) return await Answering.Batch(call, ask);
        var text = call.Read();
        if (text.Value is not { } job) return Answering.Refuse(call, text.Problems);
        if (call.Json) return Answering.Finish(call, await ask(job, call.Stop), json => json);
        var bought = await Bought.Of(job, call.Stop);
        if (bought.Value is not { } answer) return Answering.Refuse(call, bought.Problems);
        var sheet = new Sheet(call.Terminal, answer.Job.Settings);
        show(sheet, answer);
        call.Terminal.Out.Write(sheet.ToString());
        return ExitCode.Answered;
    }
}
