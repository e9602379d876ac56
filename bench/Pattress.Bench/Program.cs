using System.Globalization;
using Pattress.Bench;

if (args is ["simulate", "report", var folder, var docs]) SimulatorReport.Write(folder, docs);
else if (args is ["simulate", var scenario, _, _, var file, ..]) SimulatorRun.Run(scenario, Number(2, 0), Number(3, 100), file, Number(5, SimulatorRun.Seed));
else if (args is ["trials"]) TrialsReport.Run();
else if (args is ["plan", ..]) PlanTiming.Run(Number(1, 40));
else if (args is ["rules"]) RuleTiming.Run();
else if (args is ["statics"]) StaticsTiming.Run();
else if (args is ["lines"]) SupportsTiming.Run();
else if (args is ["buying", "times"]) await BuyingReport.Times();
else if (args is ["buying", ..]) await BuyingReport.Run(Number(1, 300));
else BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);

int Number(int i, int otherwise) => args.Length > i ? int.Parse(args[i], CultureInfo.InvariantCulture) : otherwise;
