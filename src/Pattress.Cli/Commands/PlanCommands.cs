using Pattress.Cli.Input;
using Pattress.Cli.Printing;
using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>The main job: the plan.</summary>
internal static class PlanCommands
{
    public static int Plan(Call call) => Run(call, Questions.Plan,
        planned => PlanSheet.Text(planned.Plan, planned.Settings, call.Terminal, call.Arguments.Has("--working")));

    private static int Run(Call call, Func<string, CancellationToken, Reply> ask, Func<Planned, string> show)
    {
        if (call.Json || call.Arguments.Has("--batch")) return Answering.Document(call, json => ask(json, call.Stop));
        var text = call.Read();
        if (text.Value is not { } job) return Answering.Refuse(call, text.Problems);
        var planned = Planned.Of(job, call.Stop);
        if (planned.Value is not { } plan) return Answering.Refuse(call, planned.Problems);
        call.Terminal.Out.Write(show(plan));
        return ExitCode.Answered;
    }
}
